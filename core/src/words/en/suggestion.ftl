# The suggestion, its criteria and why.
