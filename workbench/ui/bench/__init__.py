"""The lesson on the bench: what is open and selected, work behind the interface, its edits.

Has no widgets of its own and may use no other room.
"""
