// Several times of a day, each added with the phone's own wheels and taken away again.
import FrondHome
import SwiftUI

struct TimesField: View {
    @Environment(Page.self) private var page
    @State private var open = false
    @State private var picked = Date()
    let name: String
    let label: String
    let add: String
    let remove: String

    var body: some View {
        let now = page.drafts.value(name, or: [HourMinute]())
        Labelled(name, label, hint: nil) {
            ForEach(now, id: \.self) { time in
                Chosen(time: time, remove: remove) {
                    set(now.filter { $0 != time })
                    page.lead(to: name, scrolls: false)
                }
            }
            Press(add, .equal, spoken: "\(add): \(label)") {
                picked = (now.last ?? .morning).today
                open.toggle()
            }
            .reached(name)
            if open {
                Wheels(label: label, picked: $picked) { time in
                    set((now.filter { $0 != time } + [time]).sorted { ($0.hour, $0.minute) < ($1.hour, $1.minute) })
                    Task { tell(await page.go.say(time)) }
                    open = false
                    page.lead(to: name, scrolls: false)
                } close: {
                    open = false
                    page.lead(to: name, scrolls: false)
                }
            }
        }
    }

    private func set(_ times: [HourMinute]) {
        page.drafts.set(name, times)
        page.touched(name)
    }
}

/// A time that was chosen, and the way to take it away again.
private struct Chosen: View {
    @Environment(Page.self) private var page
    @State private var said: Said<HourMinute>?
    let time: HourMinute
    let remove: String
    let act: @MainActor () -> Void

    var body: some View {
        let says = said.words(for: time) ?? time.figures
        Beside {
            Words(says, .lead)
            Press(remove, .quiet, spoken: "\(remove): \(says)") { act() }
        }
        .task(id: time) { said = await Said(of: time, words: page.go.say(time)) }
    }
}
