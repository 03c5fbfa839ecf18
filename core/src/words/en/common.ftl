# Words that several rooms share: yes, no, back, units, days.
