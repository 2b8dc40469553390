"""The history of the store's tables."""
