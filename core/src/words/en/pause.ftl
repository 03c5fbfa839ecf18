# Time off, something to look forward to, coming back, and the end of the programme.

time-off-title = Time off
time-off-says = On these days nothing is asked, and no reminder comes.
time-off-no-reason = You need no reason, and it counts against nothing.
time-off-plan = Your plan may still look at how long it was since you last practised. If it will be long, tell your clinician.
time-off-empty = There is none now.
time-off-from = From
time-off-to = Up to and with

look-forward-title = Something to look forward to
look-forward-says = Something small and good, in your own words. It stands on today until you write another.
look-forward-private = It is yours alone. It goes into no summary.
look-forward-new = What do you look forward to?

welcome-title = Welcome back
welcome-glad = Good that you are here.
welcome-nothing-expected = Nothing was expected of you, and nothing has to be made up for.
welcome-what = What would you like? All of these are right.

ending-title = How to go on from here
ending-says = Nothing needs to be decided today. Each of these is a good way, and you can change your mind.
ending-signs = If something is not right, that comes first: say so, and call.
ending-talk = Talk about it first
ending-talk-says = { $clinician } can help you decide. You can call { $phone } ({ $hours }).
ending-talk-no-plan = Whoever looks after you can help you decide.
ending-maintain = Stay here
ending-maintain-says = Stay with what you use now, for as long as you like. No next step is offered until you take that back.
ending-maintain-said = You said that you stay here for now. You can take that back where your plan says how to go on.
ending-pause = Make a pause
ending-pause-says = Take time off, for as long as you need.
ending-finish = Finish
ending-finish-says = Before you finish, you can hand over a summary, if you like.
ending-finish-keep = You can keep your diary as it is. It stays locked, and nothing more is asked.
ending-finish-erase = Or you can erase everything for good, with all copies on this device.

action-time-off = Time off
action-look-forward = Something to look forward to
action-step-here = The step where you are
action-step-smaller = A smaller one
action-ending = How to go on from here
action-keep-diary = Keep my diary as it is
