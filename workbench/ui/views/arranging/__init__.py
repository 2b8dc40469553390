"""The arranging view: the original above, the arrangement below."""
