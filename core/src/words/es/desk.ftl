# The desk as a whole: keys, opening, the way around.
