//! The program's two entries: natively the command line, in a browser the screens.

fn main() {}
