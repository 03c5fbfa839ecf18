# How the diary is kept: what opens it, copies, damage, erasing, restoring.

keeping-title = How your diary is kept
keeping-phrase-title = Recovery phrase
keeping-phrase-there = Your diary also opens with the twelve words you wrote down. Keep them apart from this device, where only you find them.
keeping-phrase-none = There is none yet. Twelve words on paper open your diary when this device or its passphrase is gone. Without them, whoever forgets the passphrase has lost the diary.
keeping-copy-title = A copy for elsewhere
keeping-copy-needs-phrase = A copy that you keep somewhere else opens with your recovery phrase, so make the phrase first.
keeping-copy-none = There is none yet. If this device is lost, what you wrote is lost with it. A copy is sealed: only your twelve words open it.
keeping-copy-made = The last one was made on { $when }. What you wrote since then is not in it.
keeping-backup-title = Copies on this device
keeping-backup = { $count ->
        [one] One entry, made { $when }
       *[other] { $count } entries, made { $when }
    }
keeping-backup-unreadable = A copy that cannot be read
keeping-backup-none = There is none yet. The first is made before your first entry on another day.
keeping-backup-how = One is made before the first entry of each day you write. The three newest are kept.
keeping-limit-forgotten = A forgotten passphrase cannot be found out by anyone, Frond included. Only the recovery phrase helps then.
keeping-limit-device = Whoever can watch you type, or controls this device, can read what you read.

keeping-set-back-title = This diary is an older copy
keeping-set-back = It once had entries that are not in it any more. Somebody or something put an older copy here, for instance a backup program.
keeping-set-back-go-on = If you have a newer copy, put it back. Otherwise you can go on from here: it is written down that entries are missing.
keeping-set-back-keys = It is a copy from before you erased something or changed what opens it. What you erased may be readable in it again.
keeping-erase-again = If you have a newer copy, put it back. Otherwise look at your entries and erase again what should be gone.
keeping-read-only-title = Nothing can be written just now
keeping-missing-title = Entries are missing
keeping-missing = { $count ->
        [one] One entry can no longer be read. Your entries show between which days.
       *[other] { $count } entries can no longer be read. Your entries show between which days.
    }
keeping-missing-backup = A copy on this device may still have them. You can look into it before you decide.
keeping-missing-tell = Until you have spoken with your clinician, nothing above staying is suggested.
keeping-aside-title = Damaged parts were kept
keeping-aside = The original bytes of what was damaged were kept beside the diary. Nothing of them was thrown away.

action-keeping = How the diary is kept
action-new-passphrase = Change the passphrase
action-make-phrase = Make a recovery phrase
action-new-phrase = Make a new recovery phrase
action-make-copy = Make a copy for elsewhere
action-restore = Look into a copy on this device
action-restore-this = Restore this copy
action-restore-copy = Restore a copy from elsewhere
action-leave-as-is = Leave everything as it is
action-erase = Erase for good
action-erase-all = Erase everything for good
action-keep-it = Keep it
action-try-again = Try again
action-open-by-phrase = Open with the recovery phrase
action-start-new = Start a new diary

erase-title = Erase?
erase-count = { $count ->
        [one] One entry is erased, with its corrections.
       *[other] { $count } entries are erased, with their corrections.
    }
erase-day = Everything you told of { $day } goes.
erase-days = Everything you told of { $from } to { $to } goes.
erase-stays = Your plan and your settings stay.
erase-mark = A mark stays that something was erased. It says nothing of what it was.
erase-step-asked = You are asked again which step you use, and what counts for going on starts afresh. Days without entries count as days without practice.
erase-for-good = Nobody can bring it back.
erase-copies = The copies on this device are replaced, too.
erase-all = All you wrote, your plan, the keys and the copies on this device are erased.
erase-all-open = Something to call about is still open. Write down whom to call before you erase.
erase-reach-copies = Copies and summaries that you gave away or put elsewhere are out of reach.
erase-reach-plan = What your clinician wrote in your plan is not changed.
erase-reach-memory = The memory chips of a device can hold traces for a while. They are sealed, and the keys are destroyed.

restore-title = Restore this copy?
restore-made = It was made { $when }.
restore-entries = { $count ->
        [one] It has one entry.
       *[other] It has { $count } entries.
    }
restore-newest = The newest was written { $when }.
restore-missing = { $count ->
        [one] One entry in it cannot be read.
       *[other] { $count } entries in it cannot be read.
    }
restore-other-diary = It is of another diary than the one here.
restore-replaces = It takes the place of the diary here, which is kept aside.
restore-fewer = { $count ->
        [one] The diary here has one entry more.
       *[other] The diary here has { $count } entries more.
    }
restore-asks-step = You are asked which size you use now.
restore-no-step-up = Until you have answered, nothing above staying is suggested.

cannot-open-title = Your diary does not open
cannot-open-untouched = Nothing was changed.

today-no-backup = The daily copy could not be made. What you write is kept all the same. Free some space on the device.
today-set-back = This diary is an older copy: entries you once wrote are not in it.

refusal-nothing-to-erase = There is nothing there that can be erased.
refusal-no-phrase = There is no recovery phrase yet. Make one first; the copy opens with it.
refusal-not-a-copy = This file is not a copy of a diary, or is damaged beyond reading. Choose another one.
trouble-wrong-phrase = These words do not open this copy. It was made for another recovery phrase.
