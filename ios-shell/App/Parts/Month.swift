// A month in whole weeks.
import FrondHome
import SwiftUI

/// A grid of days. Where seven do not fit beside each other, large enough to be pressed and with their whole numbers, there is
/// only the month's name; the days stand in a list then.
struct MonthGrid: View {
    @Environment(Page.self) private var page
    let name: String
    let weekdays: [String]
    let weeks: [[CalendarDay]]

    var body: some View {
        Heading(name)
        ViewThatFits(in: .horizontal) {
            grid
            Color.clear.frame(width: 0, height: 0).accessibilityHidden(true)
        }
    }

    private var grid: some View {
        Grid(horizontalSpacing: 2, verticalSpacing: 2) {
            GridRow {
                // As the language shortens them; said in full with each day.
                ForEach(weekdays.indices, id: \.self) { at in
                    Words(weekdays[at], .small, .quiet, tight: true)
                        .fixedSize()
                        .frame(maxWidth: .infinity)
                        .accessibilityHidden(true)
                }
            }
            ForEach(weeks.indices, id: \.self) { week in
                GridRow {
                    ForEach(weeks[week].indices, id: \.self) { cell(weeks[week][$0]) }
                }
            }
        }
    }

    @ViewBuilder private func cell(_ day: CalendarDay) -> some View {
        let spoken = ([day.label] + day.done).joined(separator: ", ")
        if let opens = day.opens {
            Button {
                page.go.press(opens.does)
            } label: {
                number(day, .action)
            }
            .buttonStyle(.plain)
            .accessibilityLabel(Text(verbatim: spoken))
            .accessibilityHint(Text(verbatim: opens.label))
        } else {
            number(day, day.inMonth ? .text : .quiet)
                .accessibilityElement(children: .ignore)
                .accessibilityLabel(Text(verbatim: spoken))
        }
    }

    private func number(_ day: CalendarDay, _ colour: Tokens.Colour) -> some View {
        Text(verbatim: page.number(day.date.day))
            .letters(.body, strong: day.isToday || !day.done.isEmpty, tight: true)
            .underline(!day.done.isEmpty)
            .foregroundStyle(.ink(colour))
            .fixedSize()
            .frame(minWidth: Tokens.Target.least, maxWidth: .infinity, minHeight: Tokens.Target.least)
            .background {
                RoundedRectangle(cornerRadius: Tokens.Radius.small).fill(.ink(.soft)).opacity(day.done.isEmpty ? 0 : 1)
            }
            .overlay {
                RoundedRectangle(cornerRadius: Tokens.Radius.small)
                    .strokeBorder(.ink(.action), lineWidth: 2)
                    .opacity(day.isToday ? 1 : 0)
            }
            .contentShape(Rectangle())
    }
}
