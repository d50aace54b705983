"""The session: a fold over answers, from one stage table. It knows no clock, file or screen."""
