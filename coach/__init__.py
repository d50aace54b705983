"""Coach: walks a throwing athlete through a home program that a clinician wrote.

This package exports its version only; the command line lives in `coach.cli`.
"""

__all__ = ["__version__"]
__version__ = "0.1.0"
