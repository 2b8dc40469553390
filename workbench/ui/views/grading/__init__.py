"""The grade with its evidence, and learning from the teacher's own grades and choices.

May use the shared page, the lesson's fields and what is below them.
"""
