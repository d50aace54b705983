"""Clinical decisions: one file a topic, one function a rule, each with reason and source."""
