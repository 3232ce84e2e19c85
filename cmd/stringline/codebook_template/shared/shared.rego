# What several rules of this book share: functions alone.
package codebooks.bookname.shared

# Batteries that give off hydrogen when they are charged.
gasses(battery) := fact.one_of(battery.chemistry, ["flooded"])
