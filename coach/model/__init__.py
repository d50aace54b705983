"""The nouns of the house, frozen and checked at birth. No decisions live here."""
