//! Numbers whose bits are fixed: natively here, in a browser in `web.rs`, from one list.

mod bits;

#[test]
fn the_fixed_numbers_have_their_bits_natively() {
    bits::check();
}
