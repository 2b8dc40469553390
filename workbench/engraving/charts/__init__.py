"""Charts of a lesson and of judgements.

Uses the project's fonts only.
"""
