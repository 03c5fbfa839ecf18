# The clinician writes a programme.
