"""The window composed of all rooms: its menus, layout, tour, and how it starts and ends.

May use every room; none may use it.
"""
