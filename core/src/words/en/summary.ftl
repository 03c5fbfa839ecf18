# A summary before it leaves: what is in it, what is not, who can open it. The person decides.

summary-title = What you hand over
summary-sessions = { $count ->
        [0] No session
        [one] 1 session: what was used, for how long, how it ended, how it felt
       *[other] { $count } sessions: what was used, for how long, how each ended, how it felt
    }
summary-questions = { $count ->
        [0] No question for the visit
        [one] 1 question for the visit
       *[other] { $count } questions for the visit
    }
summary-notes = { $count ->
        [0] No note
        [one] 1 note of yours
       *[other] { $count } notes of yours
    }
summary-rated = { $count ->
        [0] No rating of an activity or a goal
        [one] 1 rating of an activity or a goal
       *[other] { $count } ratings of activities and goals
    }
summary-signs = Everything that was not right and is still open, whichever days you choose
summary-plan = Your plan, the step you use, and what the plan says now, with the reasons
summary-before = Not in it: everything before { $day }, but for your plan and the marks Frond writes itself
summary-after = Not in it: everything after { $day }, but for your plan and the marks Frond writes itself
summary-no-notes = Not in it: your notes
summary-no-questions = Not in it: your questions
summary-narrowing-shows = Whoever reads it sees that something is left out, and which of these it was. Nobody sees what.
summary-never = Never in it: what you look forward to, and how the app is set up. That is nobody's business.
summary-put-right = { $count ->
        [one] 1 entry that you put right: the first version is seen too, as numbers and without your words
       *[other] { $count } entries that you put right: the first versions are seen too, as numbers and without your words
    }
summary-left-out = { $count ->
        [one] 1 entry that you left out: it is seen as left out, as numbers and without your words
       *[other] { $count } entries that you left out: they are seen as left out, as numbers and without your words
    }
summary-opens-recipients = Only { $names } can open the file, with a key of their own. You cannot open it either.
summary-opens-passphrase = Whoever has the file and the passphrase can open it. Tell the passphrase another way than you send the file.
summary-opens-anyone = Anyone who gets the file can read it. It is not sealed.
summary-time-alone = With it goes: you would like time alone. It is not shown here again.
summary-decide = It is yours to decide. You need not hand over anything.
summary-cannot-take-back = What was handed over cannot be taken back, and erasing your diary does not reach it.
summary-nobody-told = Nobody has been told. Frond sends nothing: you hand over the file yourself.
