"""Who may drive a session, and the talk around it: the only rooms that meet a screen or a clock."""
