"""Weights learned from editions and from a teacher's choices.

Uses the whole engine; the engine knows nothing of it.
"""
