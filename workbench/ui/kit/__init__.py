"""Looks and small widgets that know nothing of lessons: colours, tables, charts, previews.

May use no other room.
"""
