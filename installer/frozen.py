"""Where the packed program begins."""

import multiprocessing
import sys

from workbench.cli import main

if __name__ == "__main__":
    multiprocessing.freeze_support()  # the processes of a batch are started by the same file
    sys.exit(main())
