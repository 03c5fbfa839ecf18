# What the numbers of one diary or of all can bear.
