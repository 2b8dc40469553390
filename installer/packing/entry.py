"""Where the packed program begins."""

import multiprocessing
import sys

if __name__ == "__main__":
    multiprocessing.freeze_support()  # a worker of `batch` begins here too
    from workbench.cli import main

    sys.exit(main())
