"""Files of paper: PDF with its tags, SVG and PNG of bars, texts.

Uses the options of a handout; knows no lesson's contents.
"""
