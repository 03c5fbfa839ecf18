# The ladder: steps, sizes, positions.
