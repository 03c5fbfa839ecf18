import Foundation
import Testing

@testable import FrondHome

/// The whole day of one person, from a diary that does not exist yet to one that is gone and restored, by what the screens
/// offer; the core behind it is the real one. The person and her plans are invented.
@MainActor @Suite(.serialized)
struct DayTests {
    @Test("The whole day", arguments: ["en", "es"])
    func whole(language: String) async throws {
        let day = try Day1(language)
        try await day.breathesFirst()
        try await day.link()
        try await day.plan()
        try await day.cautions()
        try await day.session()
        try await day.rated()
        try await day.suggested()
        try await day.stopsAndCalls()
        try await day.spoke()
        try await day.remembers()
        try await day.locks()
        try await day.handsOver()
        let (copy, twelve) = try await day.keepsElsewhere()
        try day.leavesNothingToRead(twelve)
        try await day.erases()
        try await day.restores(copy, twelve)
        day.noHealthWordInAnyNotice()
    }
}

/// One day. Decides the order of what is done and what must be true after each step.
@MainActor
final class Day1 {
    let on: Opened
    var she: Person { Person(on: on) }

    init(_ language: String) throws { on = try Opened(language) }

    /// First run: breathing comes before everything else.
    func breathesFirst() async throws {
        await on.launch()
        guard case .noDiary? = on.whole else { throw Lost("there is no diary yet") }
        try await she.press(.startNew)
        guard case .firstRun? = on.screen else { throw Lost("the first page breathes") }
        try #require(on.ways.words?.language == on.language)
        try await she.press(.breathing)
        try await she.press(.begin(.breathing(preset: .even, minutes: 3)))
        try await she.press(.begin(part: 0))
        await on.pass(.seconds(30))
        #expect(try she.clock() == 30)
        #expect(on.ports.on, "the screen stays on")
        try await she.press(.stop)
        guard case .stopped? = on.screen else { throw Lost("that stopping is right comes first") }
        #expect(!on.ports.on)
        try await she.press(.rate)
        try await rateAll(.ratherNot)
        guard case .kept? = on.screen else { throw Lost("it is kept") }
    }

    /// Somebody else's plan comes as a link: it is read, and it is not hers.
    func link() async throws {
        let link = String(decoding: try Plans.fixture("handover-v1/open.link"), as: UTF8.self)
            .trimmingCharacters(in: .whitespacesAndNewlines)
        on.phone.incoming(try #require(URL(string: link)))
        await on.settle()
        guard case .accept(let plan)? = on.screen else { throw Lost("the plan is shown: \(on.says)") }
        #expect(plan.cards.count >= 4, "the whole plan in cards")
        try await she.press(.notMine)
        try await she.home()
        guard case .today(let today)? = on.screen else { return }
        #expect(today.step == nil, "nothing was accepted")
    }

    /// Her own comes as a file; nobody signed it, and that has to be said knowingly.
    func plan() async throws {
        try await she.to(.acceptProgramme)
        guard case .addPlan(let form)? = on.whole else { throw Lost("a plan can be added") }
        let file = on.folder.appendingPathComponent("plan.json")
        try Plans.quick().write(to: file)
        on.ports.chooses = file
        let read = await on.phone.duties.choose(.plan)
        guard case .bytes(let bytes)? = read else { throw Lost("the file is read") }
        #expect(on.ports.closed == [file])
        she.set(form.file.field.key, Optional(bytes))
        await she.send { form.look($0) }
        guard case .accept(let plan)? = on.screen else { throw Lost("the plan is shown: \(on.says)") }
        await she.send { plan.accept($0) }
        guard case .accept(let again)? = on.screen else { throw Lost("not without knowing") }
        she.set("knowing", Set(again.knowing.map(\.although)))
        await she.send { again.accept($0) }
        guard case .kept? = on.screen else { throw Lost("it is kept: \(on.says)") }
        try await she.press(.stepCheck)
        try await she.press(.confirmStep)
        guard case .kept? = on.screen else { throw Lost("it is kept: \(on.says)") }
    }

    /// The whole list of cautions, none of it answered beforehand.
    func cautions() async throws {
        try await she.press(.screening)
        guard case .screening(let list)? = on.screen else { throw Lost("the list") }
        #expect(list.groups.allSatisfy { $0.answered == nil })
        #expect(Set(list.groups.map(\.group)) == Set(SignGroup.allCases))
        she.set(list.groups[0].field, Optional(FrondCore.Answer.no))
        await she.send { list.keep($0) }
        guard case .screening(let left)? = on.screen else { throw Lost("the rest is asked") }
        #expect(on.ways.wrongs.count == list.groups.count, "what is missing is said, group by group, and as a whole")
        #expect(left.groups[0].answered == .no, "nothing is lost")
        for group in left.groups { she.set(group.field, Optional(FrondCore.Answer.no)) }
        await she.send { left.keep($0) }
        guard case .kept? = on.screen else { throw Lost("it is kept: \(on.says)") }
    }

    /// A timed session. The process ends in the middle of it; it is found again and gone on with.
    func session() async throws {
        try await she.home()
        try await she.press(.begin(.step))
        if case .anythingNew(let asked)? = on.screen { await she.send { _ in asked.answer(.nothingNew) } }
        try await she.press(.begin(part: 0))
        await on.pass(.seconds(72))
        #expect(try she.clock() == 72)
        try await on.killed(away: .seconds(20 * 60))
        guard case .found(let found)? = on.screen else { throw Lost("it is found: \(on.says)") }
        #expect(Set(found.choices.map(\.choice)) == [.goOn, .finish, .discard])
        on.ways.ask(.found(.goOn))
        await on.settle()
        if she.sees(PracticeEvent.goOn) { try await she.press(PracticeEvent.goOn) }
        let certain = try she.clock()
        // Noted every few seconds: what is lost is less than that, and of the twenty minutes nothing is added.
        #expect((57...72).contains(certain), "\(certain) s of 72 are certain")
        await on.pass(.seconds(5 * 60))
        try await she.press(.enough(part: 0))
    }

    /// How it was. Nothing is chosen beforehand; refused, it loses nothing; pressed twice, it is written once.
    func rated() async throws {
        if she.sees(Does.rate) { try await she.press(.rate) }
        guard case .rate(let form)? = on.screen else { throw Lost("it is asked: \(on.view?.kind ?? "")") }
        #expect(form.ratings.count == 3)
        she.set("rating-peak", Optional(Rated.number(2)))
        await she.send { form.keep($0) }
        #expect(on.ways.wrongs.map(\.field) == form.ratings.map(\.field).filter { $0 != "rating-peak" })
        #expect(on.ways.drafts.value("rating-peak", or: nil as Rated?) == .number(2), "nothing is lost")
        for ask in form.ratings { she.set(ask.field, Optional(Rated.number(2))) }
        let asking = try #require(on.phone.form)
        on.ways.send(form.keep(asking))
        on.ways.send(form.keep(asking))
        await on.settle()
        guard case .kept? = on.screen else { throw Lost("it is kept: \(on.says)") }
    }

    /// What her clinician's rule says, why, and staying.
    func suggested() async throws {
        try await she.press(.suggestion)
        try await she.press(.feelsReady)
        guard case .ready(let ready)? = on.screen else { throw Lost("she is asked") }
        await she.send { _ in ready.answer(.yes) }
        try await she.to(.suggestion)
        guard case .suggestion(let suggestion)? = on.screen else { throw Lost("the suggestion") }
        #expect(suggestion.whose?.contains("Ada Invented") == true, "whose rule it is")
        let offers = suggestion.actions.map(\.does).filter { if case .choose = $0 { true } else { false } }
        #expect(offers.count == 2, "trying and staying")
        let stay = try #require(offers.first { if case .choose(_, .stay) = $0 { true } else { false } })
        #expect(!suggestion.reasons.isEmpty)
        try await she.press(stay)
        guard case .kept? = on.screen else { throw Lost("it is kept") }
    }

    /// A sign: stop and call, in the order of the rule; the number is one press away, and nothing rings by itself.
    func stopsAndCalls() async throws {
        try await report(.moreThanALittleBleeding)
        guard case .stopAndCall(let call)? = on.screen else { throw Lost("stop and call: \(on.says)") }
        #expect(call.call.lines.first?.kind == .stopNow)
        #expect(on.ports.dialled.isEmpty)
        try await she.dial("01632960123")
        #expect(on.ports.dialled.last?.filter(\.isNumber) == "01632960123")
        try await she.home()
        #expect(!she.sees(.begin(.step)), "no practice with trainers meanwhile")
        try await report(.numbSaddle)
        guard case .stopAndCall(let emergency)? = on.screen else { throw Lost("stop and call") }
        #expect(emergency.call.lines.first?.kind == .emergencyNumberFirst)
        on.ports.hasDialler = false
        try await she.dial("999")
        #expect(on.phone.duties.question == .number("999"), "a phone that cannot call shows the number")
        on.phone.duties.dismiss()
        on.ports.hasDialler = true
    }

    /// The talk that closes what is open.
    func spoke() async throws {
        try await she.to(.spoke)
        guard case .spoke(let form)? = on.screen else { throw Lost("the form") }
        #expect(form.signs.count == 2)
        await she.send { form.keep($0) }
        #expect(on.ways.wrongs.map(\.field) == ["with"])
        she.set("with", "Ada Invented")
        she.set("open", Set(form.signs.map(\.key)))
        she.set("pause", true)
        await she.send { form.keep($0) }
        try await she.home()
        #expect(!she.sees(.stopAndCall), "nothing asks to call any more")
    }

    func rateAll(_ rated: Rated) async throws {
        guard case .rate(let form)? = on.screen else { throw Lost("how it was is asked") }
        for ask in form.ratings { she.set(ask.field, Optional(rated)) }
        await she.send { form.keep($0) }
    }

    private func report(_ sign: Sign) async throws {
        // In reach from every screen: it stands in the frame.
        try await she.somethingIsNotRight()
        guard case .signs(let form)? = on.screen else { throw Lost("the cautions") }
        #expect(!form.isAnyChosen(on.ways.drafts))
        let group = try #require(form.signs.groups.firstIndex { $0.signs.contains { $0.sign == sign } })
        she.set("signs-\(group)", Set([sign]))
        #expect(form.isAnyChosen(on.ways.drafts))
        await she.send { form.report($0) }
    }
}
