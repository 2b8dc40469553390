"""Whole things to print: the page, the grips, the plan, a book, a student's pack.

Uses `parts`, `setting` and `files`.
"""
