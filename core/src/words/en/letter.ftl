# The letter for the referrer, and what else goes out.

out-summary-bundle = Save a list for a clinic's program (FHIR)

letter-title = Letter about a home programme
letter-title-copy = Your copy of a letter about you
letter-date = { $day } { $month ->
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
letter-about = About: { $name }
letter-foot = Confidential. Self-reported numbers.

letter-opening = I am writing about the person named above, who follows a home programme of pelvic-health physical therapy with me and who has agreed to this letter.
letter-opening-copy = This is what was written about you to { $to }. You agreed to it. If something is not right, please say so: it can be corrected.
letter-period = It covers { $first } to { $last }. What was done at home was written down by the person herself; nobody watched or measured it.
letter-period-copy = It covers { $first } to { $last }, from what you wrote down yourself.
letter-nothing-written = Up to { $last } nothing was written down.
letter-narrowed = The person chose which days to hand over. Other days are not in this letter.
letter-missing = Some entries of the diary are missing, so the numbers may be too small.

letter-done = Prescribed and done
letter-nothing-prescribed = No steps were prescribed in this time.
letter-scale = Discomfort is the highest of a session, from 0 (none) to 10 (worst imaginable).
letter-step = { $step }, { $position }, { $first } to { $last }. Prescribed: { $schedule }, which is { $least } to { $most } times in those days{ $off ->
        [0] { "" }
        [one] , one day off left out
       *[other] , { $off } days off left out
    }. Done: { $sessions ->
        [0] nothing written down
        [one] once
       *[other] { $sessions } times, on { $days ->
            [one] one day
           *[other] { $days } days
        }
    }.
letter-elsewhere = With another size or position: { $count }.
letter-stopped = Stopped early: { $count }.
letter-not-started = Could not be started: { $count }.
letter-peak = Discomfort: median { $median }, from { $least } to { $most }, in { $rated ->
        [one] one rated session
       *[other] { $rated } rated sessions
    }{ $unrated ->
        [0] { "" }
        [one] ; one was not rated
       *[other] ; { $unrated } were not rated
    }.
letter-unrated = Discomfort was not rated.
letter-practice = { $name }. Prescribed: { $schedule }. Done: { $sessions ->
        [0] nothing written down
        [one] once
       *[other] { $sessions } times, on { $days ->
            [one] one day
           *[other] { $days } days
        }
    }.

letter-function = Function and goals
letter-function-scales = Activities are rated from 0 (unable) to 10 (able as before), goals from −2 (much less than expected) to +2 (much more).
letter-activity = { $name }: { $first } on { $firstday }.
letter-activity-changed = { $name }: { $first } on { $firstday }, { $last } on { $lastday }.
letter-goal = Goal “{ $name }”: { $first } on { $firstday }.
letter-goal-changed = Goal “{ $name }”: { $first } on { $firstday }, { $last } on { $lastday }.

letter-signs = Signs, and what was done
letter-no-signs = No warning sign was written down.
letter-paused = Practice with trainers is paused at present, until it has been talked about.
letter-sign = { $day }: “{ $sign }” ({ $tier }). It is not open.
letter-sign-open = { $day }: “{ $sign }” ({ $tier }). It is still open.
letter-sign-talked = { $day }: “{ $sign }” ({ $tier }). Talked about on { $talked }, and closed.

letter-plan = The plan now
letter-plan-of = Plan by { $clinician }, revision { $revision } of { $issued }, to be looked at again by { $review }.
letter-no-plan = No plan is in force.
letter-step-now = Step in use: { $step }, { $position }, { $schedule }.
letter-view = In my view
letter-next = What is planned next
letter-request = What I ask of you
letter-request-copy = What they were asked
letter-closing = These numbers are counts of what one person wrote down. They show no cause and replace no examination.
letter-closing-copy = These are counts of what you wrote down. There is no right number. Your notes, your questions and anything else you wrote are not in this letter.
letter-cannot-print = A character that this letter’s font lacks stands as its number, such as [U+05D0].
