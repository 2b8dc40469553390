"""What is kept of a lesson and of the shelf: history, versions, backups, two writers.

May use the bench and the kit.
"""
