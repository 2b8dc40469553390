"""One module for every change of the tables, oldest first."""
