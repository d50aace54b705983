"""The durable diary: `Journal`, where it lives, and why it may be refused."""

from coach.journal.diary import Journal, Sitting, Unfinished
from coach.journal.folder import data_folder, throwaway
from coach.journal.trouble import Trouble

__all__ = ["Journal", "Sitting", "Trouble", "Unfinished", "data_folder", "throwaway"]
