"""All tests, by room."""
