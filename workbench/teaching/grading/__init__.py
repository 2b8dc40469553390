"""How hard a piece is: features, demands of each grade, the model and its fit to a teacher.

Uses `bars` and `lessons`.
"""
