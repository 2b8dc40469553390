"""The lesson heard in the window: what is played, its controls, and what follows it."""
