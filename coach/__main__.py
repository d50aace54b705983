"""`python -m coach`: the same as the command."""

import sys

from coach.cli import main

sys.exit(main())
