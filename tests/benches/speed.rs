//! Times what has a budget and prints one table.
fn main() {}
