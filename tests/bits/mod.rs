//! The list of calls whose bits must be the same natively and in a browser.

use tubwright::units;

/// Fails at the first call whose bits are not the ones written down.
pub fn check() {
    let fixed = [
        (
            "rad_per_s_from_rpm(750)",
            units::rad_per_s_from_rpm(750.0),
            0x4053_a28c_59d5_433b_u64,
        ),
        (
            "rpm_from_rad_per_s(78.5)",
            units::rpm_from_rad_per_s(78.5),
            0x4087_6cf5_503e_e7f1,
        ),
    ];
    for (call, value, bits) in fixed {
        assert_eq!(
            value.to_bits(),
            bits,
            "{call} gave {value:e}, bits {:#018x}",
            value.to_bits()
        );
    }
}
