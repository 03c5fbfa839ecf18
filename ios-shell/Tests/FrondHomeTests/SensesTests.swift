import Foundation
import Testing

@testable import FrondHome

/// The breath, how it is told, and the clock of a practice.
@MainActor
struct SensesTests {
    private func pacer() -> Pacer {
        let phases = [
            PacerPhase(phase: .in, millis: 4000, word: "In"), PacerPhase(phase: .holdIn, millis: 1000, word: "Hold"),
            PacerPhase(phase: .out, millis: 6000, word: "Out"), PacerPhase(phase: .holdOut, millis: 500, word: "Hold"),
        ]
        return Pacer(phases: phases, breathMillis: 11_500, breaths: 2, wholeMillis: 23_000, cues: [], over: "Done")
    }

    @Test func theBreathIsWhereAPlainCountSaysItIs() {
        let pacer = pacer()
        // Counted apart: one step for every millisecond.
        var at: UInt64 = 0
        for breath in 0..<2 {
            for phase in pacer.phases {
                for within in 0..<phase.millis {
                    let now = pacer.at(at)
                    if now.phase != phase || now.breath != UInt64(breath) || now.millisLeft != phase.millis - within
                        || abs(now.progress - Double(within) / Double(phase.millis)) > 1e-9 {
                        Issue.record("\(at)")
                        return
                    }
                    at += 1
                }
            }
        }
        #expect(pacer.at(at).phase == nil)
        #expect(pacer.at(.max).phase == nil)
        #expect([2000, 4500, 8000, 11_200].map { pacer.at($0).width } == [0.5, 1, 0.5, 0])
    }

    @Test func nothingChosenIsSilentAndAScreenReaderHearsTheFirstBreathAndTheEnd() {
        let ports = TestPorts()
        var cueing = Cueing(senses: ports, chosen: [], language: "en")
        for _ in 0..<2 { cueing.tell(.in, "In") }
        #expect(ports.buzzed.isEmpty && ports.played == 0 && ports.spoken.isEmpty && ports.announced.isEmpty)
        ports.reader = true
        cueing = Cueing(senses: ports, chosen: [], language: "en")
        for _ in 0..<3 {
            cueing.tell(.in, "In")
            cueing.tell(.holdIn, "Hold")
            cueing.tell(.out, "Out")
            cueing.tell(.holdOut, "Hold")
        }
        cueing.tell(nil, "Done")
        #expect(ports.announced == ["In", "Hold", "Out", "Done"])
        #expect(ports.spoken.isEmpty)
    }

    @Test func whatWasChosenTellsEachChangeAndTwoVoicesNeverSpeakAtOnce() {
        let ports = TestPorts()
        var cueing = Cueing(senses: ports, chosen: [.tone, .vibration, .word], language: "en")
        cueing.tell(.in, "In")
        cueing.tell(.out, "Out")
        #expect(ports.spoken == ["In", "Out"] && ports.announced.isEmpty && ports.played == 2 && ports.buzzed.count == 2)
        ports.reader = true
        cueing = Cueing(senses: ports, chosen: [.word], language: "en")
        cueing.tell(.in, "In")
        cueing.tell(.in, "In")
        #expect(ports.announced == ["In", "In"] && ports.spoken.count == 2)
        cueing.end()
        #expect(ports.silenced == 1)
    }

    @Test func everyBeatFeelsAndSoundsUnlikeTheOthers() {
        #expect(Set(Beat.allCases.map(\.buzz)).count == 4)
        #expect(Set(Beat.allCases.map(\.hertz)).count == 4)
        for beat in Beat.allCases {
            let wave = SoftTone.wave(beat.hertz)
            #expect(wave.first == 0 && wave.last == 0, "nothing clicks")
            #expect(wave.allSatisfy { abs(Int($0)) < Int(Int16.max) / 3 })
            // Its pitch, counted by how often it goes up through nothing: within a tone's length of 0.32 s.
            let ups = zip(wave, wave.dropFirst()).filter { $0.0 < 0 && $0.1 >= 0 }.count
            #expect(abs(Double(ups) / 0.32 - beat.hertz) < 8, "\(beat)")
        }
    }

    @Test func theClockGoesOnFromWhatTheCoreSaid() {
        func screen(_ state: TimerState) -> RunningScreen {
            let view = TimerView(
                state: state, part: 0, parts: 1, partMillis: 61_500, leastMillis: 0, mostMillis: 0, totalMillis: 61_500,
                leastReached: false, nextInMillis: 10_000)
            return RunningScreen(
                title: "", part: nil, used: "", position: nil, instruction: nil, line: nil, clock: "", clockSpoken: "",
                view: view,
                buttons: [Button(event: .pause, label: "p"), Button(event: .stop, label: "s")], smaller: [], mark: nil,
                pacer: nil, seenEveryMillis: 15_000, cautions: [], actions: [])
        }
        let runs = PracticeClock(screen(.running), answered: 1000)
        #expect(runs.text(at: 1000) == "1:01" && runs.text(at: 1500) == "1:02" && runs.text(at: 540_500) == "10:01")
        #expect(runs.passed(at: 0) == 61_500, "never back")
        let stands = PracticeClock(screen(.paused), answered: 1000)
        #expect(stands.text(at: 9_000_000) == "1:01")
        #expect(screen(.running).stop?.event == .stop)
        #expect(screen(.running).others.map(\.event) == [.pause])
        #expect(screen(.running).noteEvery == .milliseconds(5000))
    }

    @Test func whatTheClockReachesIsToldOnceAndNeverLate() async throws {
        let ports = TestPorts()
        let time = TestTime()
        let on = try Opened()
        let reminders = Reminders(folder: on.places.beside, notices: ports)
        let told = PhoneDuties(
            ports: ports.all, limits: try limits(), shared: SharedFiles(in: on.places.caches), reminders: reminders, own: [])
        let mark = Mark(inMillis: 10_000, cues: [.tone, .word], says: "Ten minutes are over.")
        let begun = time.millis
        let bell = Task { await told.tell(mark, at: begun + mark.inMillis, by: time, language: "en", sleep: time.sleep) }
        for _ in 0..<20 { await Task.yield() }
        time.pass(.seconds(9))
        for _ in 0..<20 { await Task.yield() }
        #expect(ports.spoken.isEmpty)
        time.pass(.seconds(1))
        await bell.value
        #expect(ports.spoken == ["Ten minutes are over."] && ports.played == 1 && ports.buzzed.isEmpty)
        // The phone slept over it.
        await told.tell(mark, at: time.millis - 5001, by: time, language: "en", sleep: time.sleep)
        #expect(ports.spoken.count == 1)
        let gone = Task { await told.tell(mark, at: time.millis + 1000, by: time, language: "en", sleep: time.sleep) }
        for _ in 0..<20 { await Task.yield() }
        gone.cancel()
        await gone.value
        #expect(ports.spoken.count == 1, "the screen went")
        ports.reader = true
        await told.tell(mark, at: time.millis, by: time, language: "en", sleep: time.sleep)
        #expect(ports.announced == ["Ten minutes are over."] && ports.spoken.count == 1)
    }

    @Test func theNumberIsSaidDigitByDigit() { #expect(PhoneDuties.spoken("01632 960123") == "0 1 6 3 2 9 6 0 1 2 3") }
}
