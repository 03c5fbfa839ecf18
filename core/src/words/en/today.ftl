# What today asks, what was written, and the plan in words.

today-title = Today
today-read-only = The diary can only be read just now. What you wrote is there. Free some space on the device, then open it again.
today-missing = { $count ->
        [one] One earlier entry may be missing. Tell your clinician at the next talk; until then your plan stays on this step.
       *[other] { $count } earlier entries may be missing. Tell your clinician at the next talk; until then your plan stays on this step.
    }
today-paused = Trainers are paused until you have spoken with someone.
today-practice-waits = A practice of yours waits to be written down or to go on.
today-clock = Is it { $date }, { $when }? The clock of this device may be wrong. If it is, set that clock first, and come back.
today-confirm-step = { $step }: is this what you use now?
today-review = Your plan was due to be looked at again. Ask for a visit; until then it stays as it is.
today-settled = If you like, say how you are after your last session.
today-activities = Your plan asks how you get on with what matters to you. It can wait.
today-time-off = You have time off. Nothing is asked today.
today-no-programme = There is no plan yet. You can breathe and write it down; Frond suggests nothing without your clinician's plan.
today-enough-for-today = You have done what the plan asks at most for one day. Rest is part of it.
today-done-today = Done today.
today-rest-day = A rest day in your plan.
today-days-this-week = { $days ->
        [one] Practised on { $days } day this week.
       *[other] Practised on { $days } days this week.
    }
today-weekly = { $times ->
        [one] { $times } time a week
       *[other] { $times } times a week
    }
today-weekly-span = { $least } to { $most } times a week
today-enough = Not in the mood? Today, breathing is enough.
today-nothing-now = Do nothing else now. Look at whom to call.
today-look-forward = You look forward to: { $what }

entries-title = What you wrote
entries-empty = Nothing yet. Your first session will stand here.
entries-struck = Left out
entries-corrected = Corrected
entries-written-later = Written on { $date }
entries-session = { $what }, { $minutes ->
        [one] { $minutes } minute
       *[other] { $minutes } minutes
    }, { $ended }, { $peak }
entries-finished = finished
entries-stopped = stopped
entries-could-not-start = could not start
entries-peak = highest discomfort { $number }
entries-unrated = not rated
entries-step-change = Another step
entries-step-confirmed = Step confirmed
entries-programme = Plan accepted, revision { $revision }
entries-signs = Noted: { $signs }
entries-spoke = Spoke with { $with }
entries-screening = Questions about how you are, answered
entries-feels-ready = Asked whether to try the next step: rather not say
entries-ready = Would like to try the next step
entries-not-yet = Not yet the next step
entries-suggestion = Looked at what the plan says
entries-chose-try = Chose to try it
entries-chose-stay = Chose to stay
entries-stay-here = Chose how to go on
entries-time-off = Time off from { $from } to { $to }
entries-look-forward = Look forward to: { $what }
entries-function = { $activity }: { $number } of 10
entries-goal = { $goal }: { $reached }
entries-question = For the visit: { $text }
entries-settled-yes = It had settled
entries-settled-not-yet = It had not settled yet
entries-settled-unsaid = Asked whether it had settled: rather not say
entries-settings = Settings changed
entries-hold-conditions = Questions about holding the breath, answered
entries-reminders = Reminders set
entries-put-off = A reminder put off
entries-time-confirmed = Time confirmed
entries-clock = The clock may have been wrong
entries-missing = { $count ->
        [one] One entry is missing here
       *[other] { $count } entries are missing here
    }
entries-missing-between = { $count ->
        [one] One entry is missing between { $after } and { $before }
       *[other] { $count } entries are missing between { $after } and { $before }
    }
entries-missing-after = { $count ->
        [one] One entry is missing after { $after }
       *[other] { $count } entries are missing after { $after }
    }
entries-missing-before = { $count ->
        [one] One entry is missing before { $before }
       *[other] { $count } entries are missing before { $before }
    }
entries-restored = Restored from a copy
entries-copy-made = A copy for elsewhere was made
entries-erased = Erased

plan-title = Your plan in words

kept-title = Kept.
kept-session = Well looked after. The rest can wait.
kept-stopped = You stopped, and that is always right. Nothing more is asked today.
kept-contact = If you would like to talk: { $name }, { $phone } ({ $hours }).
kept-strike = It is left out from now on. You can still see it in what you wrote.
kept-correction = The correction counts from now on. The first version stays visible to you.
kept-step = This step is used from now on.
kept-programme = This plan is used from now on.
kept-spoke = Good that you spoke with someone.
kept-screening = Thank you. Nothing here asks you to stop.
kept-reminders = Set.
kept-settings = Changed.
kept-question = It will be with your questions for the visit.
kept-settled = Thank you. Nothing more is asked about it.
kept-not-settled = Thank you for saying so. Rest today, if you can. If it hurts, bleeds or worries you, look at what may not be right and whom to call.
kept-time-off = Enjoy it. Nothing is asked on those days.
kept-rated = Thank you. There is no right or wrong answer.
