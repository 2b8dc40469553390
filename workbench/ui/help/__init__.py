"""The help, the list of keys and the error report.

May use what tells its keys: writing and the bench; and the kit.
"""
