# A programme on its way: signing, key words, what changes when another comes.

handover-signed-title = Who signed it
handover-first-key = It is signed. Frond does not know this key yet. It keeps the key if you say yes.
handover-key-words = The key, in words: { $words }
handover-compare = Your clinic can tell you its words, on paper or by phone. They must be the same.
handover-same-key = It is signed with the key of your clinic, as before.
handover-follows = Your clinic has a new key. The key you know signed the new one.
handover-other-key = It is signed with another key than the one you know. It may come from somebody else.
handover-known-key = The key of your clinic, in words: { $words }
handover-nobody-signed = Nobody signed it. Frond cannot tell who made it, or if it was changed.
handover-signed-before = Your plans were signed until now.

handover-different-title = What is different
handover-newer-revision = You use revision { $used } now. This is revision { $this }.
handover-older-revision = You use revision { $used } now. This is revision { $this }, which is older.
handover-same-number = It has the same number as the plan you use, { $this }, and does not say the same. You use { $used }.
handover-another-plan = It is another plan, not a new revision of yours. If you say yes, it takes the place of yours.
handover-newer-before = You used revision { $before } of that plan before. This is revision { $this }, which is older.
handover-now-says = New: { $line }
handover-no-longer = No longer said: { $line }

handover-although-unsigned = I know where this plan comes from.
handover-although-other-key = I asked my clinic. This key is theirs.
handover-although-older = I asked my clinic. I use the older one again.
handover-although-same = I asked my clinic. This is the one that is meant.
refusal-unsigned = Nobody signed this plan. Use it only if you know where it comes from, and say so first.
refusal-other-key = This plan is signed with another key than your clinic's. Ask your clinic. Use it only if they say that it is theirs.
refusal-older-revision = This is an older version of the plan you use. Ask your clinician which one is meant. Use it only if they say so.
refusal-same-revision = This plan has the number of the one you use, and does not say the same. Ask your clinician which one is meant.

handover-too-long = This is longer than a plan can be. Check that it is the right file.
handover-not-signed = This is not a signed plan. Choose the file that the clinic handed over.
handover-not-a-link = This is no link to a plan. Copy the whole line that begins with FROND:
handover-newer = This plan comes from a newer Frond. Update this one to read it.
handover-damaged = This file was changed or cut short on its way. Ask for it again.
handover-garbled = Something is missing in this link, or a letter is wrong. Scan or copy it once more.
handover-not-genuine = The signature does not fit. The plan was changed, or somebody else made it. Do not use it. Ask your clinic for it again.
handover-words-needed = This link is sealed. Type the { $count } words that you were told.
handover-word-not-listed = Word { $number } is not in the list. Check how it is spelled.
handover-words-count = There must be { $count } words. Type them all, in their order.
handover-wrong-words = These words do not open this link. Check them, or ask your clinic for the right ones.
handover-too-large = This plan is too long for one code: { $characters } characters, and { $most } is the most. Hand over the file instead.
handover-no-room = This device has no room to do that just now. Close other programs and try again.

handover-link = Or the link of the code
handover-link-hint = It begins with FROND: and is one long line.
handover-words = The words that you were told
handover-words-hint = Only where a link is sealed. Small or large letters do not matter.
handover-knowing = Before you say yes

handover-code-title = A code to scan
handover-code-sealed = Scan it with Frond. It opens with the words that you were told.
handover-code-open = Scan it with Frond.

handover-title = Hand over a plan
handover-programme-file = The programme, as a file
handover-whose = A plan for { $whom }, revision { $number }
handover-way = Who can read the code?
handover-way-sealed = Whoever knows four words that I say
handover-way-open = Whoever sees the code
handover-way-hint = The signed file is made either way. It is not sealed.
handover-way-missing = Choose who can read the code.
handover-sign = Sign it
handover-ready = The plan is signed
handover-your-key = The words of your key
handover-your-key-how = Give these words on paper or by phone. The phone shows the same words, and the two can be compared.
handover-say = Say these words
handover-say-how = They open the code. Say them; do not write them on the same sheet.
handover-is-open = The code is open. Whoever sees it can read the plan.
handover-link-title = The code as a link
handover-sheet = A sheet to print
handover-sheet-title = For your phone
handover-sheet-from = From { $clinic }, number { $number }
handover-sheet-key = Frond shows six words when you scan it. They must be these: { $words }
handover-save = Save the signed file
handover-file-how = The file always works, and is not sealed. Send it only in a way that others cannot read.
handover-done = Put it away
