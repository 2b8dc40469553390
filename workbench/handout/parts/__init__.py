"""What can stand on a page of a lesson: facts, form map, grips, plan, the teacher's additions.

Uses `setting`.
"""
