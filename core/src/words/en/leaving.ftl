# Words that leave Frond: on a notification, on a watch or in a car, in a calendar. A stranger may
# read them. Nothing here hints at health, at a body, at an appointment or at this program; a test
# holds every message of this file, in every language, against that language's list of health words.

leaving-moment = A moment for you
leaving-quiet = A little quiet time
leaving-reminder = Your reminder
leaving-own-time = Time of your own
leaving-calendar-file = calendar.ics

# A phone's own words around a notification, a file that is shared, and the screen after leaving at once.

leaving-channel = Reminders
leaving-later = Later
leaving-done = Done
leaving-open = Open
leaving-share = Share
leaving-closed = Closed
