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

out-title = Letter and files
out-says = What is here goes to others only if you send it. Frond sends nothing.
out-letter = Write a letter
out-save-bundle = Save the summary for a clinic’s program (FHIR)
out-save-table = Save the sessions as a table
out-files-are-open = These files are not sealed: anybody who has them can read them. The wish for time alone is never in them.
out-many = Many summaries at once, as lines for a database: close the desk, then use the command “frond gather --desk”.
out-back = Back to the summary
out-not-made = This could not be made from the summary. Ask for the summary again, or update Frond.

letter-form-title = Write a letter
letter-form-says = Names and addresses are typed for this letter alone. They are kept nowhere: not in the desk, not in the diary.
letter-form-never = The letter never holds the person’s notes, her questions, or that she would like time alone.
letter-form-person = Name of the person
letter-form-person-hint = As the other clinician knows it.
letter-form-known = What else says who it is, such as the date of birth (may stay empty)
letter-form-to = To whom it goes: name and address
letter-form-from = Your name and profession
letter-form-reached = Where you can be reached (may stay empty)
letter-form-date = Date of the letter
letter-form-view = What you make of it (may stay empty)
letter-form-next = What you plan next (may stay empty)
letter-form-request = What you ask of the other clinician
letter-form-agreement = Agreement
letter-form-agreed = The person agreed to this letter
letter-form-agreed-hint = Without it no letter is made. Offer her a copy.
letter-form-look = Look at the letter
letter-error-needed = Please write something here.
letter-error-text = This is too long, or holds a character that is none of a text.
letter-error-date = Please give a day.
letter-error-agreed = No letter is made unless the person agreed to it. Ask her, then tick this.
letter-look-title = The letter
letter-look-says = Read it before you send it. Nothing of it is kept: save it now if you want it.
letter-look-copy = Look at the person’s own copy, in plain words
letter-look-letter = Look at the letter again
letter-save-pdf = Save as PDF
letter-save-page = Save as a page to print
letter-write-again = Begin another letter
