# Settings, and everything that is not needed every day.

settings-title = Settings
settings-language = Language
settings-language-reviewed = A licensed clinician has read its safety text.
settings-language-not-reviewed = No licensed clinician has read its safety text yet. It is here to be tried out.
settings-numbers = Sizes and counts on today, where your plan folds them
settings-numbers-folded = Folded until I open them
settings-numbers-open = Always open
settings-lock = What opens your diary
settings-lock-says = You can change it at any time.
settings-lock-after = When to ask for the code again, after you went to another app
settings-lock-after-hint = When the screen goes dark, or the phone puts Frond to sleep, it locks at once.
settings-lock-at-once = At once
settings-lock-minutes = { $count ->
        [one] After one minute
       *[other] After { $count } minutes
    }
settings-cues = Sounds and buzzes
settings-cues-says = Nothing sounds or buzzes unless you choose it. A soft tone, a short buzz or a word can tell a change of breath, and the end of a part while you practise.
settings-reminders = Reminders
settings-copies = Copies
settings-copies-says = What opens your diary if you forget, and what is left if this device is lost.
settings-shows = Who could see something
settings-shows-says = What this phone can still show to someone who looks.
settings-time-off = Time off
settings-time-off-says = Days on which nothing is asked.
settings-erase = Erase
settings-erase-says = You see what it comes to before anything is erased.

more-title = More
more-diary = Your diary
more-plan = Your plan
more-visit = For your visit
more-frond = About Frond

action-more = More
action-settings = Settings
action-shows = What this phone can still show
action-first-run = What Frond is
