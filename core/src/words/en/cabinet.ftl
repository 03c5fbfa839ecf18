# Summaries that came back, and the visit page. A clinician reads this.

cabinet-at = { $day }, { $time }

# The list of people.
cabinet-people = Summaries
cabinet-people-count = { $people ->
        [one] 1 diary
       *[other] { $people } diaries
    }, { $summaries ->
        [one] 1 summary
       *[other] { $summaries } summaries
    }.
cabinet-people-found = { $count ->
        [0] Nothing was found. Shorten what is looked for.
        [one] 1 found.
       *[other] { $count } found.
    }
cabinet-people-page = Page { $page } of { $pages }.
cabinet-empty = There is no summary here yet.
cabinet-empty-how = A summary is a file that the person exports from her diary and gives to you: sealed to the key in her plan, with a passphrase, or open. Bring it in below. It is kept here sealed to your key, whatever it came as.
cabinet-empty-invented = To try this without anybody: “frond demo” writes an invented diary with its summary.
cabinet-find = Look for a nickname
cabinet-find-hint = A part of it is enough. The beginning of a diary's mark works too.
cabinet-order = In this order
cabinet-order-open = what is open first
cabinet-order-newest = newest summary first
cabinet-order-nickname = by nickname
cabinet-order-longest = longest without practice first
cabinet-look = Look
cabinet-page-before = Page before
cabinet-page-after = Next page
cabinet-no-nickname = Without a plan (diary { $id })
cabinet-time-alone = Time alone, please
cabinet-open-emergency = { $count ->
        [one] 1 open sign: emergency
       *[other] { $count } open signs, the gravest: emergency
    }
cabinet-open-stop = { $count ->
        [one] 1 open sign: stop and call
       *[other] { $count } open signs, the gravest: stop and call
    }
cabinet-open-ask-first = { $count ->
        [one] 1 open sign: ask first
       *[other] { $count } open signs, the gravest: ask first
    }
cabinet-open-note = { $count ->
        [one] 1 open sign: note only
       *[other] { $count } open signs: note only
    }
cabinet-paused = Paused by the rule
cabinet-fuller = Another summary, made { $made }, holds more entries: read it too
cabinet-fuller-open = A sign or a pause is open in that one
cabinet-made = Made { $made }; shows { $first } to { $last }
cabinet-practised = { $sessions ->
        [one] 1 session
       *[other] { $sessions } sessions
    }, the last on { $last }
cabinet-not-practised = No session in it
cabinet-step = In use: { $step }
cabinet-questions = { $count ->
        [one] 1 question for the visit
       *[other] { $count } questions for the visit
    }
cabinet-narrowed = Not the whole diary: she chose what to hand over
cabinet-older-too = { $count ->
        [one] and 1 other summary
       *[other] and { $count } other summaries
    }
cabinet-same-nickname = Another diary has the same nickname. This one's mark begins with { $id }.

# Bringing files in.
cabinet-bring = Bring summaries in
cabinet-bring-files = Files
cabinet-bring-files-hint = One or many at once. They are read on this computer and go nowhere.
cabinet-bring-files-all = Or a whole folder
cabinet-bring-path = Or a folder of this computer, by its path
cabinet-bring-path-hint = For very many files. The folder is read and left as it is.
cabinet-bring-passphrase = Passphrase, where they were sealed with one
cabinet-bring-key-choice = If a diary that you know comes with another key
cabinet-bring-new-key = Accept the new key: the person told me that she began anew or has a new phone
cabinet-bring-now = Bring in
cabinet-bring-none = Choose a file, or name a folder.
cabinet-bring-no-folder = This folder cannot be read. Check its path.
cabinet-bring-busy = Other files are still coming in. Wait until that has ended.
cabinet-progress = { $done } of { $total }
cabinet-progress-bar = How far it is
cabinet-look-again = See how far it is now
cabinet-bringing = Summaries are coming in
cabinet-brought = What came in
cabinet-reading = Summaries are being read anew
cabinet-read = Summaries were read anew
cabinet-reading-why = What was noted about them for this list was missing or damaged. Nothing is lost: it is made again from the sealed files.
cabinet-brought-nothing = There was no file in it.
cabinet-brought-new = { $count ->
        [one] 1 summary came in.
       *[other] { $count } summaries came in.
    }
cabinet-brought-older = { $count ->
        [one] 1 summary came in that is older than one you have of the same diary. If it was sent as the newest, ask why.
       *[other] { $count } summaries came in that are older than ones you have of the same diaries. If one was sent as the newest, ask why.
    }
cabinet-brought-known = { $count ->
        [one] 1 was here already.
       *[other] { $count } were here already.
    }
cabinet-brought-refused = { $count ->
        [one] 1 file was not taken in; nothing of it was kept.
       *[other] { $count } files were not taken in; nothing of them was kept.
    }
cabinet-brought-failed = The disk did not take everything. Check that there is room, and bring the files in once more; what is here already is recognised.
cabinet-refused = { $count ->
        [one] Not taken in: 1 file
       *[other] Not taken in: { $count } files
    }
cabinet-refused-more = And { $count } more.
cabinet-file-without-name = A file without a name
cabinet-see-people = To the summaries
cabinet-see-person = Read it
cabinet-refused-other-record = This is a health record of another program. Frond reads its own summaries only.
cabinet-refused-passphrase = It was sealed with a passphrase. Bring it in once more and give the passphrase.
cabinet-refused-wrong-passphrase = The passphrase does not open it. Check it and try once more.
cabinet-refused-other-key = It names a diary that you know and is signed with another key. Ask the person whether she began anew or has a new phone; if so, bring it in once more and accept the new key.
cabinet-refused-unreadable = It cannot be read. Check that it was copied whole.
cabinet-refused-not-sealed = It could not be sealed to your key, so it was not kept. Try once more.
cabinet-refused-no-room = There is no room on the disk. Make some and try once more.
cabinet-refused-not-kept = It could not be kept. Check the desk's folder and try once more.
cabinet-refused-too-long = It is longer than a summary can be. Check that it is the right file.
cabinet-refused-not-a-summary = This is no summary of Frond. Check that it is the right file.
cabinet-refused-damaged = It is damaged. Ask for it to be sent once more.
cabinet-refused-form = Its signature holds, but it is not in the form that this Frond knows. Update Frond, or ask for it once more.
cabinet-refused-newer = It was made by a newer Frond. Update Frond to read it.
cabinet-refused-wrong-key = It is sealed to somebody else's key. Ask for it to be sealed to the key in the plan.
cabinet-refused-work = It asks for more work to open than any Frond would. Do not rely on it; ask for it once more.
cabinet-refused-signature = The signature does not fit: something was changed after it was made. Do not rely on it; ask for it once more.

# What is wrong with the cabinet itself.
cabinet-unfit = { $count ->
        [one] 1 sealed file in the desk's folder is not in this list
       *[other] { $count } sealed files in the desk's folder are not in this list
    }
cabinet-unfit-damaged = damaged or unreadable: { $count }
cabinet-unfit-not-opened = not sealed to your keys, or no summary: { $count }
cabinet-unfit-other-key = a known diary with another key: { $count }
cabinet-pins-lost = The list of the marks that diaries are known by was damaged. It was made again from the summaries here, and the damaged one is kept aside. A mark of yours on paper is worth comparing.

# One diary.
cabinet-visit-window = Summary
cabinet-notes-open = Unfold notes
cabinet-visit-back = All summaries
cabinet-cannot-open = This summary cannot be opened any longer: its file is damaged, missing, or sealed to other keys. If you have it elsewhere, bring it in once more.
cabinet-apart = A summary made { $made } holds { $count ->
        [one] 1 entry of { $first } that is not in this one
       *[other] { $count } entries of { $first } to { $last } that are not in this one
    }. Nothing was erased in between that would explain it.
cabinet-apart-sign = A sign is noted there.
cabinet-apart-ask = Perhaps two phones keep this diary, it was put back from a copy, or the clock of the phone was wrong. Ask which one is used, and read both before you change the plan.
cabinet-apart-read = Read the other one
cabinet-others = Other summaries of this diary
cabinet-others-says = { $count ->
        [one] 1 other summary came before or beside this one.
       *[other] { $count } other summaries came before or beside this one.
    }
cabinet-others-newer = This is not the newest summary of the diary.
cabinet-others-fuller = Yet it holds more entries than a newer one: the clock of the phone was wrong, or two phones keep this diary.
cabinet-others-before = An older one shows days from { $first } on that this one does not show.
cabinet-others-more = An older one holds more entries: something was erased, left out or lost to damage since.
cabinet-others-keys = { $count ->
        [one] One key was accepted for this diary.
       *[other] { $count } keys were accepted for this diary, one after the other.
    }
cabinet-other = Made { $made }; shows { $first } to { $last }, { $entries ->
        [one] 1 entry
       *[other] { $entries } entries
    }
cabinet-other-newer = Newer: made { $made }; shows { $first } to { $last }, { $entries ->
        [one] 1 entry
       *[other] { $entries } entries
    }
cabinet-remove = Take this diary's summaries away
cabinet-remove-says = The sealed files of this diary are deleted from this computer for good. Copies elsewhere are out of reach. The mark that the diary is known by stays.
cabinet-remove-now = Delete them

# Another rule.
cabinet-what-if = What another rule would have said
cabinet-insight-all = Time on each step, over all diaries
cabinet-what-if-all = What another rule would say, over all diaries
cabinet-what-if-about = The rule in force stands beside another on the same diary. The other one replaces every rule of the plan, those of single steps too, and what was paused under the old one. The diary was kept under the old one: with another rule she may have done other things.
cabinet-what-if-about-all = For each diary, its own rule stands beside the other one. The other one replaces every rule of the plan, those of single steps too. The diaries were kept under their own rules.
cabinet-what-if-not-saved = Nothing is saved by looking.
cabinet-what-if-narrowed = Entries were left out of this summary, so the rule cannot be replayed from it.
cabinet-what-if-choose = Which rule to try
cabinet-what-if-desks = A rule of this desk
cabinet-rule-of-plan = { $name }, revision { $revision }
cabinet-rule-of-draft = { $name }, draft of revision { $revision }
cabinet-revise = Write a new revision of this plan
cabinet-no-plan = There is no plan in this summary that could be revised.
cabinet-what-if-file = A file with a rule or a plan
cabinet-what-if-text = Or the rule itself, as JSON
cabinet-what-if-text-hint = Change what stands here, or paste another one.
cabinet-what-if-compare = Compare
cabinet-what-if-compare-all = Compare over all diaries
cabinet-what-if-revise = Make this a new revision
cabinet-what-if-revise-says = Opens the composer with the plan in force and this rule in it. Nothing is signed or handed over until you do that there.
cabinet-what-if-error = This is no rule that can be read: { $why }
cabinet-what-if-none = Choose a file, or write the rule.
cabinet-what-if-no-rule = This plan has no rule for all its steps.
cabinet-what-if-reads = The rule that is tried
cabinet-rule-own = Rule in force
cabinet-rule-tried = Rule tried
cabinet-when = When
cabinet-told = Told
cabinet-when-made = When the summary was made
cabinet-differs = differs
cabinet-differs-column = The same?
cabinet-what-if-counts = { $count ->
        [0] They say the same after every entry ({ $entries }).
        [one] They differ after 1 entry of { $entries }.
       *[other] They differ after { $count } entries of { $entries }.
    }
cabinet-first-differences = The first differences
cabinet-all-entries = Every entry
cabinet-what-if-diaries = { $diaries ->
        [one] 1 diary was compared
       *[other] { $diaries } diaries were compared
    }; at the end the two rules say different things for { $now ->
        [0] none
       *[other] { $now }
    }.
cabinet-what-if-ever = At some entry they differ for { $count ->
        [0] none
        [one] 1 diary
       *[other] { $count } diaries
    }.
cabinet-what-if-left-out = { $count ->
        [one] 1 diary could not be replayed: entries were left out, or it cannot be opened.
       *[other] { $count } diaries could not be replayed: entries were left out, or they cannot be opened.
    }
cabinet-what-if-table = How many diaries, by what each rule says at the end
cabinet-what-if-list = Diaries where they differ
cabinet-what-if-more = And { $count } more.
cabinet-what-if-same-now = At the end both say: { $own }
cabinet-what-if-now = At the end: { $own }; tried: { $tried }
cabinet-what-if-running = Comparing
cabinet-outcome = Outcome
cabinet-outcome-back = back to an earlier step
cabinet-outcome-up = try the next step

# Charts, each with a table beside it.
cabinet-charts = Charts
cabinet-chart-table = The same as a table
cabinet-chart-day = { $day } { $month ->
        [1] Jan
        [2] Feb
        [3] Mar
        [4] Apr
        [5] May
        [6] Jun
        [7] Jul
        [8] Aug
        [9] Sep
        [10] Oct
        [11] Nov
       *[12] Dec
    }
cabinet-chart-newest = The newest { $shown } of { $all } sessions are drawn.
cabinet-chart-discomfort = Highest discomfort, session by session
cabinet-chart-discomfort-says = { $sessions ->
        [one] 1 session
       *[other] { $sessions } sessions
    } from { $first } to { $last }, grouped by the step in use; { $unrated ->
        [0] all rated
       *[other] { $unrated } not rated, left as gaps
    }. 0 is none, 10 the worst imaginable. Self-reported.
cabinet-chart-discomfort-axis = Highest discomfort, 0 to 10
cabinet-mark-finished = finished, with the step's size and position
cabinet-mark-stopped = stopped or not started
cabinet-mark-different = finished, with another size or position
cabinet-mark-unrated = not rated
cabinet-unrated = not rated
cabinet-chart-days = Days practised in each week, beside the plan
cabinet-chart-days-axis = Days practised
cabinet-chart-days-says = { $weeks ->
        [one] 1 week
       *[other] { $weeks } weeks
    }: days with a session, and how many the plan asked for.
cabinet-chart-minutes = Minutes practised in each week, beside the plan
cabinet-chart-minutes-axis = Minutes practised
cabinet-chart-minutes-says = { $weeks ->
        [one] 1 week
       *[other] { $weeks } weeks
    }: minutes of all sessions, pauses left out, and how many the plan asked for.
cabinet-chart-weeks-note = Weeks begin on Monday. Each is planned by the step in use at its end; days off and days that are not shown are left out of the plan.
cabinet-chart-weeks-newest = At most { $weeks } weeks are drawn, the newest.
cabinet-mark-practised = practised
cabinet-mark-planned = planned, least to most
cabinet-planned-span = { $least } to { $most }
cabinet-chart-steps = Steps over time, with suggestions and choices
cabinet-chart-steps-says = { $steps ->
        [one] 1 time on a step
       *[other] { $steps } times on steps
    } from { $first } to { $last }, and { $suggestions ->
        [0] no suggestion
        [one] 1 suggestion
       *[other] { $suggestions } suggestions
    } other than to stay.
cabinet-chart-steps-note = Suggestions to stay are not drawn. Going up is not the aim of every plan.
cabinet-mark-span = in use
cabinet-mark-up-tried = next step suggested, and tried
cabinet-mark-up-not = next step suggested, and not tried
cabinet-mark-back-tried = earlier step suggested, and tried
cabinet-mark-back-not = earlier step suggested, and not tried
cabinet-mark-talk = ready to talk
cabinet-mark-pause = pause and call
cabinet-step-began = in use from here on
cabinet-column-day = Day
cabinet-column-step = Step
cabinet-column-peak = Highest discomfort
cabinet-column-how = How
cabinet-column-week = Week from
cabinet-column-off = Days off
cabinet-column-what = What
cabinet-column-chosen = Choice
