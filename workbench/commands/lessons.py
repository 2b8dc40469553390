"""``lessons``: what the store holds."""
