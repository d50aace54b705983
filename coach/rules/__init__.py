"""The clinical decisions: one file a topic, one function a rule, each with its reason and source."""
