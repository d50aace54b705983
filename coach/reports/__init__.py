"""What was recorded, told to people: lists now; nothing is decided or worked out anew here."""
