"""From MEI to flattened drawings of systems, with the marks set by hand's rule.

Uses `mei`.
"""
