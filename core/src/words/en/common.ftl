# Words that several rooms share: dates, sizes, positions, practices, what to press.

common-date = { $weekday ->
        [1] Monday
        [2] Tuesday
        [3] Wednesday
        [4] Thursday
        [5] Friday
        [6] Saturday
       *[7] Sunday
    } { $day } { $month ->
        [1] January
        [2] February
        [3] March
        [4] April
        [5] May
        [6] June
        [7] July
        [8] August
        [9] September
        [10] October
        [11] November
       *[12] December
    } { $year }
common-today-at = today at { $time }
common-yesterday-at = yesterday at { $time }
common-date-at = on { $date } at { $time }

common-size = { $mm } mm
common-trainer = { $label }, { $size }
common-then = , then { "" }
common-part = { $used }: { $minutes }
common-step-used = { $used }, { $position }
common-step-plain = { $step }, { $position }
common-minutes = { $minutes ->
        [one] { $minutes } minute
       *[other] { $minutes } minutes
    }
common-minutes-span = { $least } to { $most } minutes

common-on-back = lying on your back
common-side-lying = lying on your side
common-sitting = sitting
common-standing = standing
common-position-other = in the position your plan describes

common-practice-trainer = Trainer
common-practice-breathing = Slow breathing
common-practice-belly-breathing = Belly breathing
common-practice-meditation = Meditation
common-practice-other = Another practice

common-rating-peak = highest discomfort
common-rating-before = discomfort before
common-rating-after = discomfort afterwards
common-rating-worry = worry

action-today = Back to today
action-log = Log a session
action-log-as-planned = Done as planned
action-log-different = Something was different
action-practices = What to practise
action-breathing = Breathe
action-begin = Begin
action-begin-step = Begin your practice
action-go-to-practice = Back to your practice
action-rate = Write down how it was
action-later = Later
action-not-now = Not now
action-done = Done
action-go-on = Go on
action-screening = Answer a few questions
action-hold-questions = Answer the questions about holding your breath
action-other-step = I use another step
action-not-mine = This is not mine
action-reminders = Reminders
action-calendar-file = Make a calendar file
action-log-breathing = Log a breathing practice
action-ladder = Your steps
action-suggestion = What your plan says now
action-signs = Something is not right
action-stop-and-call = Whom to call
action-spoke = I spoke with …
action-entries = What you wrote
action-plan = Your plan in words
action-accept-programme = Add your plan
action-confirm-step = Yes, this is what I use now
action-step-check = Say what you use now
action-time-right = Yes, it is { $date }, { $time }
action-feels-ready = Say how you feel about the next step
action-try = Try it
action-stay = Stay where I am
action-stay-here = Stay here for now
action-stay-here-end = Go on as my plan says
action-take-back = Take this back

trouble-free-space = There is no room left on this device, so this was not kept. What you wrote before is safe. Free some space and try again.
trouble-open-again = Something is wrong with the file of your diary. Open the diary again and look whether your last entry is there.
trouble-read-only = The diary can only be read just now. Free some space on the device, then open it again.
trouble-close-elsewhere = This diary is open somewhere else. Close it there and try again.
trouble-update = This diary was written by a newer Frond. Update Frond to open it. Nothing was changed.
trouble-wrong-secret = This does not open the diary. Check what you typed and try again.
trouble-code-asked = This diary opens with a code. Type your code.
trouble-restore = Something needed to open this diary is damaged or missing. Nothing was changed. Your twelve words, or a copy, may bring it back.
trouble-not-a-diary = There is no diary in this folder. Check the folder, or start a new diary there.
trouble-already-there = There is a diary here already. Open it, or choose another place.
trouble-try-again = That did not work just now, and nothing was written. Try again.

refusal-future = The time lies in the future. Check the date and the time.
refusal-no-such-entry = There is no such entry. Look at what you wrote to find it.
refusal-machine-mark = Frond wrote this mark itself to keep you safe, so it cannot be changed.
refusal-other-kind = A correction tells the same kind of thing as before. Take the entry back and write a new one instead.
refusal-no-such-step = Your plan has no such step. Look at your steps.
refusal-no-programme = There is no plan with steps yet. Add your plan first.
refusal-suggestion-changed = Things have changed since this was shown. Look again at what your plan says now.
refusal-not-open = This is not open, or was closed already. Look again at what is open.
refusal-plan = This plan cannot be used as it is. Send it back to whoever wrote it:
    { $why }
refusal-revision-in-use = You use this plan already. Nothing was changed.
refusal-end-before-start = The last day lies before the first day. Check both.
refusal-parts = Tell 1 to 6 parts, each up to 24 hours long.
refusal-size-missing = Tell which size you used.
refusal-no-sign = Choose at least one.
refusal-sign-not-asked = This one cannot be reported. Choose one from the list.
refusal-number-not-offered = Frond only opens the numbers shown on this screen.
refusal-no-session = This is asked about a session. Look at what you wrote to find it.
refusal-too-long = This is too long to be kept. Shorten it.
refusal-no-such-practice = Your plan has no such practice now. Look again at what there is to practise.
refusal-no-running-time = This device cannot count time here. Practise without the clock and write it down afterwards.
refusal-too-many-reminders = There are 20 reminders, which is the most. Take one away first.
refusal-not-put-off = It cannot be put off: it would come in your quiet hours or on another day, or reminders are off.

day-monday = Monday
day-tuesday = Tuesday
day-wednesday = Wednesday
day-thursday = Thursday
day-friday = Friday
day-saturday = Saturday
day-sunday = Sunday
