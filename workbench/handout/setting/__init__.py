"""Setting a page: lines of text, blocks, breaks, pages that can be seen and printed.

Uses `files`; knows no particular sheet.
"""
