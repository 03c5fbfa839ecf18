import Foundation
import Testing

@testable import FrondHome

/// What a screen says of its form, with the real core behind it.
@MainActor @Suite(.serialized)
struct PageTests {
    /// The form for a code, in a diary that was just begun.
    private func codeForm() async throws -> (Opened, Page) {
        let on = try Opened()
        await on.launch()
        on.ways.whole(.startNew)
        await on.settle()
        on.ways.press(.codeForm)
        await on.settle()
        guard case .setCode? = on.whole, let shown = on.ways.shown else { throw Lost("code form: \(on.says)") }
        return (on, Page(shown: shown, phone: on.phone))
    }

    private func form(_ on: Opened) throws -> SetCodeScreen {
        guard case .setCode(let screen)? = on.whole else { throw Lost("code form: \(on.says)") }
        return screen
    }

    @Test func whatHasToBePutRightIsSaidWithItsQuestionUntilItIsTouched() async throws {
        let (on, page) = try await codeForm()
        let screen = try form(on)
        let new = screen.set.new
        page.named(new.field.key, new.label)
        #expect(page.wrongs.isEmpty && page.reach == nil)
        page[text: TextKey(name: "new", before: "")] = "1"
        page[text: TextKey(name: "again", before: "")] = "1"
        page.send { screen.keep($0) }
        await on.settle()
        // The same screen comes again: the same page goes on, and leads to what is wrong.
        #expect(try page.comes(#require(on.ways.shown)))
        let wrong = try #require(page.wrongs.first)
        #expect(wrong.field == "new" && page.reach?.name == Page.problems)
        #expect(page.isThere("new") && !page.isThere("again"))
        #expect(page.named(wrong) == "\(new.label): \(wrong.says)")
        #expect(page.wrong("new") == wrong.says)
        page[text: TextKey(name: "new", before: "")] = "12345678"
        #expect(page.wrong("new") == nil, "said no more beside the field")
        #expect(!page.wrongs.isEmpty, "it stays at the top until it is sent")
        page.forget("new")
        #expect(page.named(wrong) == wrong.says)
        page.folds(["new"], "More?")
        #expect(page.isThere("new") && page.named(wrong) == "More? \(wrong.says)")
    }

    @Test func anotherScreenHasAPageOfItsOwn() async throws {
        let (on, page) = try await codeForm()
        on.ways.press(.today)
        await on.settle()
        #expect(try !page.comes(#require(on.ways.shown)))
    }

    @Test func digitsOfAnyKeyboardAreANumber() async throws {
        let (_, page) = try await codeForm()
        let field = NumberKey(name: "minutes", before: 7)
        #expect(page[digits: field] == "7")
        // Arabic-Indic and Devanagari digits (Unicode Standard, general category Nd).
        let all = [("12", 12), ("\u{661}\u{662}", 12), ("\u{967}\u{968}", 12), ("1 2 min", 12), ("007", 7), ("12345", 1234)]
        for (typed, number) in all {
            page[digits: field] = typed
            #expect(page.drafts.value("minutes", or: Int?.none) == number, "\(typed)")
        }
        for empty in ["", "-", "\u{BD}"] {
            page[digits: field] = empty
            #expect(page[digits: field].isEmpty, "\(empty)")
        }
    }

    @Test func oneIsLedToAPlaceOnceAndSoon() async throws {
        let (_, page) = try await codeForm()
        page.lead(to: "new")
        let first = try #require(page.reach)
        #expect(first.leads(to: "new") && !first.leads(to: "again"))
        page.lead(to: "new")
        #expect(page.reach != first, "the same place again is another wish")
        #expect(!LedTo(name: "new", at: .now - .seconds(2)).leads(to: "new"), "what appears much later was not meant")
        page.lead(to: "again", scrolls: false)
        try await Task.sleep(for: .milliseconds(250))
        #expect(page.settled?.name != "again", "what is in sight is not moved")
        page.lead(to: "again")
        try await Task.sleep(for: .milliseconds(250))
        #expect(page.settled == page.reach)
    }

    @Test func theKeyboardIsHeldByOneField() async throws {
        let (_, page) = try await codeForm()
        page.types("new", true)
        page.types("again", true)
        page.types("new", false)
        #expect(page.typing == "again", "the one before goes after the next has come")
        page.types("again", false)
        #expect(page.typing == nil)
        let before = page.away
        page.putKeyboardAway()
        #expect(page.away != before)
    }
}
