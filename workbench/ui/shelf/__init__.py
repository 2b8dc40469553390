"""The shelf: lessons and pieces found, opened, put in order, and what comes next.

May use the bench and the kit.
"""
