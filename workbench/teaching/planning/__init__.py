"""How long a piece takes to learn, the practice plan by days, and the cautions.

Uses `bars` and `grading`.
"""
