//! One source of sound as a small graph: generator, band, swelling, loudness.

use wasm_bindgen::JsValue;
use web_sys::AudioBuffer;
use web_sys::AudioBufferSourceNode;
use web_sys::AudioContext;
use web_sys::AudioNode;
use web_sys::AudioScheduledSourceNode;
use web_sys::BiquadFilterNode;
use web_sys::BiquadFilterType;
use web_sys::GainNode;
use web_sys::OscillatorNode;
use web_sys::OscillatorType;

use crate::app::sound::timbre::Timbre;
use crate::plant::sound::SoundSource;

/// How fast a voice follows its source, s.
const FOLLOW_S: f64 = 0.06;
/// Length of a knock, s.
const KNOCK_S: f64 = 0.18;
/// Share of the loudness that swells where a source beats.
const SWELL: f32 = 0.5;
/// Lowest and highest tone played, Hz.
const TONES_HZ: (f64, f64) = (25.0, 12_000.0);

enum Generator {
    Tone(OscillatorNode),
    Noise(AudioBufferSourceNode, BiquadFilterNode),
}

/// A lasting source while it is heard.
pub struct Voice {
    generator: Generator,
    loudness: GainNode,
    beat: OscillatorNode,
    depth: GainNode,
}

impl Voice {
    /// Starts a silent voice into `out`.
    pub fn start(
        context: &AudioContext,
        out: &AudioNode,
        noise: &AudioBuffer,
        timbre: Timbre,
    ) -> Result<Self, JsValue> {
        let loudness = context.create_gain()?;
        loudness.gain().set_value(0.0);
        let swelling = context.create_gain()?;
        swelling.gain().set_value(1.0);
        let generator = generator(context, noise, timbre, &swelling)?;
        let (beat, depth) = (context.create_oscillator()?, context.create_gain()?);
        depth.gain().set_value(0.0);
        beat.connect_with_audio_node(&depth)?;
        depth.connect_with_audio_param(&swelling.gain())?;
        beat.start()?;
        swelling.connect_with_audio_node(&loudness)?;
        loudness.connect_with_audio_node(out)?;
        Ok(Self {
            generator,
            loudness,
            beat,
            depth,
        })
    }

    /// Follows its source: tone, beat and loudness.
    pub fn follow(&self, source: &SoundSource, gain: f32, now_s: f64) -> Result<(), JsValue> {
        let tone_hz = source.tone_hz.clamp(TONES_HZ.0, TONES_HZ.1) as f32;
        let tone = match &self.generator {
            Generator::Tone(oscillator) => oscillator.frequency(),
            Generator::Noise(_, band) => band.frequency(),
        };
        tone.set_target_at_time(tone_hz, now_s, FOLLOW_S)?;
        let beats = source.beat_hz > 0.0;
        self.beat
            .frequency()
            .set_target_at_time(source.beat_hz as f32, now_s, FOLLOW_S)?;
        self.depth
            .gain()
            .set_target_at_time(if beats { SWELL } else { 0.0 }, now_s, FOLLOW_S)?;
        self.fade(gain, now_s)
    }

    /// Moves towards a loudness.
    pub fn fade(&self, gain: f32, now_s: f64) -> Result<(), JsValue> {
        self.loudness
            .gain()
            .set_target_at_time(gain, now_s, FOLLOW_S)?;
        Ok(())
    }

    /// Fades out and ends; the browser frees the graph afterwards.
    pub fn end(&self, now_s: f64) -> Result<(), JsValue> {
        self.fade(0.0, now_s)?;
        let when_s = now_s + 8.0 * FOLLOW_S;
        self.beat.stop_with_when(when_s)?;
        match &self.generator {
            Generator::Tone(oscillator) => oscillator.stop_with_when(when_s),
            Generator::Noise(noise, _) => scheduled(noise).stop_with_when(when_s),
        }
    }
}

/// Plays a source that sounds once: a burst that dies away.
pub fn knock(
    context: &AudioContext,
    out: &AudioNode,
    noise: &AudioBuffer,
    (source, timbre): (&SoundSource, Timbre),
    gain: f32,
) -> Result<(), JsValue> {
    let now_s = context.current_time();
    let loudness = context.create_gain()?;
    loudness.gain().set_value_at_time(gain, now_s)?;
    loudness
        .gain()
        .set_target_at_time(0.0, now_s, KNOCK_S / 3.0)?;
    loudness.connect_with_audio_node(out)?;
    let tone_hz = source.tone_hz.clamp(TONES_HZ.0, TONES_HZ.1) as f32;
    match generator(context, noise, timbre, &loudness)? {
        Generator::Tone(oscillator) => {
            oscillator.frequency().set_value(tone_hz);
            oscillator.stop_with_when(now_s + 2.0 * KNOCK_S)
        }
        Generator::Noise(noise, band) => {
            band.frequency().set_value(tone_hz);
            scheduled(&noise).stop_with_when(now_s + 2.0 * KNOCK_S)
        }
    }
}

fn generator(
    context: &AudioContext,
    noise: &AudioBuffer,
    timbre: Timbre,
    into: &GainNode,
) -> Result<Generator, JsValue> {
    let wave = match timbre {
        Timbre::Buzz => OscillatorType::Triangle,
        Timbre::Tone => OscillatorType::Sine,
        Timbre::Noise { q } => {
            let band = context.create_biquad_filter()?;
            band.set_type(BiquadFilterType::Bandpass);
            band.q().set_value(q);
            let source = context.create_buffer_source()?;
            source.set_buffer(Some(noise));
            source.set_loop(true);
            source.connect_with_audio_node(&band)?;
            band.connect_with_audio_node(into)?;
            scheduled(&source).start()?;
            return Ok(Generator::Noise(source, band));
        }
    };
    let oscillator = context.create_oscillator()?;
    oscillator.set_type(wave);
    oscillator.connect_with_audio_node(into)?;
    oscillator.start()?;
    Ok(Generator::Tone(oscillator))
}

/// A buffer's own start and stop are out of date; those of its base are not.
fn scheduled(noise: &AudioBufferSourceNode) -> &AudioScheduledSourceNode {
    noise
}
