"""The engraved score: shown, selected on, and marked.

May use the bench and the kit.
"""
