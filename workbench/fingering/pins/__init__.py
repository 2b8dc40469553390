"""What the teacher or an edition asks for: pins typed, printed or shared, and why some cannot be.

Uses `hand` and `lattice`.
"""
