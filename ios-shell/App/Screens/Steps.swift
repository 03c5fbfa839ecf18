// The steps of the plan. Smaller is one tap; a larger one comes after its caution.
import FrondHome
import SwiftUI

/// The steps, and which is used now.
struct LadderView: View {
    @Environment(Page.self) private var page
    let screen: LadderScreen

    var body: some View {
        Title(screen.title)
        Says(screen.empty)
        if screen.empty == nil { Says(screen.smallerIsFine) }
        ForEach(screen.rungs.indices, id: \.self) { at in
            let rung = screen.rungs[at]
            Box(rung.name, here: rung.present ? rung.note : nil) {
                Says(rung.used)
                if !rung.present {
                    Quiet(rung.note)
                    choose(rung, at)
                }
            }
        }
        Also(screen.actions)
    }

    @ViewBuilder private func choose(_ rung: Rung, _ at: Int) -> some View {
        if rung.larger {
            let tell = page.words.tell
            // Opened, it says the one caution first; nothing is chosen by opening it.
            Fold("rung-\(at)", rung.choose) {
                Noticed([screen.largerCaution])
                Equally([
                    Offer(tell.stay) { $0.go.press(.ladder) },
                    Offer(tell.stepClinician) { $0.send(rung.choose(.clinician)) },
                    Offer(tell.stepOwn) { $0.send(rung.choose(.ownChoice)) },
                ])
            }
        } else {
            Equally([Offer(rung.choose) { $0.send(rung.choose(.ownChoice)) }])
        }
    }
}

/// "Is this what you use now?"
struct StepCheckView: View {
    let screen: StepCheckScreen

    var body: some View {
        Title(screen.title)
        Says(screen.empty)
        Lead(screen.step)
        Next(screen.next)
        Also(screen.actions)
    }
}
