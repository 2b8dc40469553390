"""The lesson as a value: its sections, remarks and choices, and what becomes of them in a change.

Uses `bars`.
"""
