import Foundation
import Testing

@testable import FrondHome

// The second half of the day: what she sets, locks, hands over, keeps elsewhere and erases.

extension Day1 {
    /// A reminder: set, held by the phone, put off when it came.
    func remembers() async throws {
        try await she.to(.reminders)
        guard case .reminders(let form)? = on.screen else { throw Lost("reminders") }
        await she.send { form.add($0) }
        #expect(on.ways.wrongs.map(\.field) == ["practice", "days", "times"])
        she.set("practice", Optional(form.practices[0].practice))
        she.set("days", Set(form.days.map(\.weekday)))
        she.set("times", [HourMinute(hour: 21, minute: 0)])
        await she.send { form.add($0) }
        guard case .reminders(let added)? = on.screen else { throw Lost("reminders again: \(on.says)") }
        #expect(added.reminders.count == 1)
        if !added.on { await she.send { _ in added.turn } }
        guard case .reminders(let turned)? = on.screen else { throw Lost("reminders again") }
        #expect(turned.on)
        #expect(!on.ports.pending.isEmpty)
        #expect(on.ports.pending.count <= 50)
        #expect(on.ports.pending.allSatisfy { $0.at.hour == 21 && $0.at.minute == 0 })
        #expect(Set(on.ports.pending.map(\.id)).count == on.ports.pending.count)
        // The same for a calendar: a plain file, so only a place for it is offered.
        try await she.press(.calendarFile)
        guard case .whither(.open(let calendar))? = on.phone.duties.question else { throw Lost("a calendar file: \(on.says)") }
        #expect(String(decoding: calendar.bytes, as: UTF8.self).hasPrefix("BEGIN:VCALENDAR"), "RFC 5545, 3.4")
        on.phone.duties.save()
        await on.settle()
        #expect(on.ports.saved.last == .open(calendar))
        // It comes, and she puts it off, without the diary being opened.
        let first = try #require(on.ports.pending.first)
        let wait = first.at.date(in: on.time.zone).timeIntervalSince(on.time.date)
        await on.pass(.seconds(Int64(wait) + 60))
        await on.phone.duties.reminders.putOff()
        let again = try #require(on.ports.pending.first)
        #expect(again.at > first.at && again.at.day == first.at.day, "it comes again a little later")
        await on.phone.duties.reminders.done()
    }

    /// Her own code: a wrong one opens nothing, a wait after several, the right one opens.
    func locks() async throws {
        try await she.to(.keeping)
        try await she.press(.codeForm)
        guard case .setCode(let form)? = on.whole else { throw Lost("a code can be set") }
        she.set("new", code)
        she.set("again", code + " other")
        await she.send { form.keep($0) }
        #expect(!on.ways.wrongs.isEmpty, "twice the same")
        #expect(on.ways.drafts.value("new", or: "") == "", "a secret leaves the field as soon as it is sent")
        she.set("new", code)
        she.set("again", code)
        await she.send { form.keep($0) }
        guard case .done? = on.whole else { throw Lost("it is set: \(on.says)") }
        #expect(on.ways.coded)
        try await she.press(.keeping)
        // Long enough behind other apps: it is locked before anything is shown.
        on.phone.wentBehind()
        on.time.pass(.seconds(119))
        on.phone.cameInFront()
        await on.settle()
        guard case .keeping? = on.screen else { throw Lost("a little while keeps it open") }
        on.phone.wentBehind()
        on.time.pass(.seconds(120))
        on.phone.cameInFront()
        #expect(on.phone.front == .blank, "nothing is in sight before it is locked")
        await on.settle()
        #expect(on.phone.front == .screens)
        var tries = 0
        while true {
            guard case .code(let ask)? = on.whole else { throw Lost("a wrong code opens nothing: \(on.says)") }
            if ask.wait != nil { break }
            tries += 1
            try #require(tries < 20, "no wait after \(tries) wrong codes")
            she.set("code", "not " + code)
            await she.send { ask.give($0) }
        }
        guard case .code(let waiting)? = on.whole, let wait = waiting.wait else { return }
        await on.pass(.milliseconds(Int64(wait.millis) + 1000))
        guard case .code(let ask)? = on.whole else { throw Lost("it is asked again") }
        #expect(ask.wait == nil, "after the wait it is asked again by itself")
        she.set("code", code)
        await she.send { ask.give($0) }
        #expect(on.screen != nil, "the right one opens: \(on.says)")
    }

    /// A summary, sealed with a passphrase; what is saved is a sealed file with a name that says nothing.
    func handsOver() async throws {
        try await she.home()
        try await she.to(.summary)
        guard case .summary(let form)? = on.screen else { throw Lost("a summary") }
        await she.send { form.save(.summary, $0) }
        guard case .summary(let asked)? = on.screen else { throw Lost("who may open it has to be chosen") }
        #expect(!on.ways.wrongs.isEmpty)
        she.set("way", Optional(SummaryClose.passphrase))
        she.set("new", "seven quiet invented words")
        she.set("again", "seven quiet invented words")
        await she.send { asked.save(.summary, $0) }
        let file = try await saved()
        #expect(file.name.lowercased().firstMatch(of: /pain|pelvi|frond|session/) == nil, "the name says nothing: \(file.name)")
        isSealed(file.bytes)
        // The same may go to another app, because it is sealed.
        await she.send { asked.save(.summary, $0) }
        guard case .whither(let other)? = on.phone.duties.question else { throw Lost("it is asked where") }
        on.phone.duties.share()
        await on.settle()
        let laid = try #require(on.ports.shared.last)
        #expect(laid.lastPathComponent == other.name)
        #expect(on.ports.sharedBytes.last == other.bytes)
        #expect(!FileManager.default.fileExists(atPath: laid.path), "the other app has a copy of its own")
        // A table is open: only a place for it is offered.
        she.set("way", Optional(SummaryClose.open))
        await she.send { asked.save(.table, $0) }
        guard case .whither(.open)? = on.phone.duties.question else { throw Lost("a plain file: \(on.says)") }
        let before = on.ports.shared.count
        on.phone.duties.share()
        await on.settle()
        #expect(on.ports.shared.count == before, "no plain file goes to another app")
        on.phone.duties.dismiss()
        #expect(on.phone.duties.told == on.ways.words?.files.notSaved)
    }

    /// Twelve words on paper, and a copy that only they open; what was saved and the words.
    func keepsElsewhere() async throws -> (Data, [String]) {
        try await she.home()
        try await she.to(.keeping)
        try await she.press(.makePhrase)
        guard case .phrase(let phrase)? = on.whole else { throw Lost("another screen: \(on.says)") }
        let twelve = phrase.words
        #expect(twelve.count == 12)
        await she.send { _ in phrase.written }
        guard case .phraseCheck(let check)? = on.whole else { throw Lost("another screen: \(on.says)") }
        for line in check.asked { she.set(line.field.key, "other") }
        await she.send { check.check($0) }
        #expect(!on.ways.wrongs.isEmpty, "other words are refused")
        guard case .phraseCheck(let asked)? = on.whole else { throw Lost("another screen: \(on.says)") }
        for line in asked.asked {
            guard case .word(let place) = line.field else { throw Lost("another screen: \(on.says)") }
            she.set(line.field.key, twelve[Int(place) - 1])
        }
        await she.send { asked.check($0) }
        guard case .done? = on.whole else { throw Lost("another screen: \(on.says)") }
        try await she.press(.makeCopy)
        guard case .copy(let copy)? = on.whole else { throw Lost("another screen: \(on.says)") }
        await she.send { _ in copy.make }
        let file = try await saved()
        isSealed(file.bytes)
        await she.send { _ in copy.isKept }
        guard case .kept? = on.screen else { throw Lost("another screen: \(on.says)") }
        return (file.bytes, twelve)
    }

    /// What her day has left on the phone so far, read as somebody would who has copied the app's whole folders: exactly these
    /// files, and in none of them, or their names, a word of the field or a text that she typed.
    func leavesNothingToRead(_ twelve: [String]) throws {
        // What the test itself put there for her to choose.
        let left = try Left.below(on.folder).filter { $0.name != "plan.json" }
        let other = left.map(\.name).filter { name in !Left.ours.contains { name.wholeMatch(of: $0) != nil } }
        #expect(other.isEmpty, "no other file: \(other)")
        #expect(left.contains { $0.name == "support/diary/journal" && $0.bytes.count > 8192 }, "the diary is among them")
        let typed = [
            code, "seven quiet invented words", "Ada Invented", twelve.joined(separator: " "),
            twelve.prefix(3).joined(separator: " "),
        ]
        let wrong = left.flatMap { $0.found(Left.words + typed) }
        #expect(wrong.isEmpty, "read in what was left: \(wrong)")
        // The same search finds one that was planted, in each writing.
        for writing in Left.writings("Ada Invented") {
            let planted = Left(name: "journal", bytes: Data(repeating: 7, count: 500) + writing + Data(count: 40))
            #expect(!planted.found(typed).isEmpty, "one in \(writing.count) bytes")
        }
    }

    /// Everything is erased, and nothing of it lies in the folder any more.
    func erases() async throws {
        try await she.to(.keeping)
        try await she.press(.eraseSomeDays)
        guard case .eraseDays(let form)? = on.whole else { throw Lost("days can be erased") }
        let day = try #require(Day(written: "2026-03-02"))
        she.set("from", Optional(day))
        she.set("to", Optional(day))
        await she.send { form.look($0) }
        guard case .erase? = on.screen else { throw Lost("looked at first: \(on.says)") }
        try await she.press(.eraseDaysNow(from: day, to: day))
        guard case .done? = on.whole else { throw Lost("erased: \(on.says)") }
        let secrets = Set(on.box.all.keys)
        #expect(secrets.count == 1)
        try await she.press(.keeping)
        try await she.press(.eraseAll)
        try await she.press(.eraseAllNow)
        guard case .erased? = on.whole else { throw Lost("erased: \(on.says)") }
        #expect(on.ports.pending.isEmpty, "no reminder comes any more")
        #expect(on.box.all.isEmpty, "the key is destroyed")
        let left = try FileManager.default.subpathsOfDirectory(atPath: on.places.beside.path)
        #expect(left.allSatisfy { ["diary", "marks"].contains($0) || $0.hasPrefix("diary/") }, "\(left)")
        #expect(!left.contains { $0.contains("journal") || $0.contains("keys") }, "\(left)")
    }

    /// On another phone, or this one after everything was erased: the copy and the words bring everything back.
    func restores(_ copy: Data, _ twelve: [String]) async throws {
        try await on.newProcess()
        await on.launch()
        guard case .noDiary? = on.whole else { throw Lost("there is no diary") }
        try await she.press(.restoreCopy)
        guard case .restoreCopy(let form)? = on.whole else { throw Lost("a copy can be restored") }
        let eleven = twelve.dropLast().joined(separator: " ")
        she.set("file", Optional(copy))
        she.set("phrase", eleven)
        await she.send { form.look($0) }
        #expect(!on.ways.wrongs.isEmpty, "eleven words open nothing")
        #expect(on.ways.drafts.value("phrase", or: "") == eleven, "nothing typed is lost")
        she.set("phrase", twelve.joined(separator: " "))
        await she.send { form.look($0) }
        guard case .restoring? = on.whole else { throw Lost("what it holds comes first: \(on.says)") }
        try await she.press(.restoreNow)
        try await she.home()
        guard case .today(let today)? = on.screen else { return }
        #expect(today.step != nil, "her plan is there again")
    }

    /// Every notice that the phone was ever given says the same few neutral words.
    func noHealthWordInAnyNotice() {
        #expect(!on.ports.everPending.isEmpty)
        for notice in on.ports.everPending {
            for words in [notice.says, notice.later ?? "", notice.done, notice.id] {
                // English and Spanish, written here from the subject itself.
                let health = /(?i)pelvi|pain|dolor|trainer|dilat|sess?i|breath|respir|exerc|ejerc|health|salud|clinic|diar|vagin/
                #expect(words.firstMatch(of: health) == nil, "\(words)")
            }
        }
    }

    private func saved() async throws -> LeavingFile {
        guard case .whither? = on.phone.duties.question else { throw Lost("another screen: \(on.says)") }
        on.phone.duties.save()
        await on.settle()
        #expect(on.phone.duties.told == on.ways.words?.files.saved)
        return try #require(on.ports.saved.last)
    }

    /// An age file (C2SP age, version 1), in its binary form.
    private func isSealed(_ bytes: Data) {
        #expect(String(decoding: bytes.prefix(21), as: UTF8.self) == "age-encryption.org/v1")
    }
}

private let code = "four small apples"
