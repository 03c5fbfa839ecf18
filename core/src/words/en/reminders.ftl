# Choosing reminders. These words stay inside Frond; what leaves it stands in leaving.ftl.

reminders-off = Reminders are off until you turn them on.
reminders-after = After { $routine }: { $what }
reminders-says = It will only say: “{ $words }”
reminders-in-quiet-hours = { $time } lies in your quiet hours. Nothing will be shown then.
reminders-calendar-note = Whoever can see your calendar will see these words and times, and nothing else. A calendar may be copied to other devices and to the company that keeps it. What is in it stays there until you delete it.
