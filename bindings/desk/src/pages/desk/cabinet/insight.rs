//! A closer look at the numbers: of one summary, folded; of the cabinet, on a page of its own.
