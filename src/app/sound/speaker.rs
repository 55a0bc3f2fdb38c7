//! The loudspeaker: keeps one voice for each lasting source and plays what sounds once.
//!
//! A browser lets a page sound only after a person has touched it, so nothing is set up before the
//! first act. Where the browser has no sound, everything works silently.

use std::collections::BTreeMap;

use rand_chacha::ChaCha8Rng;
use rand_core::RngCore;
use rand_core::SeedableRng;
use wasm_bindgen::JsValue;
use web_sys::AudioBuffer;
use web_sys::AudioContext;
use web_sys::AudioContextState;
use web_sys::DynamicsCompressorNode;

use crate::app::sound::timbre;
use crate::app::sound::timbre::timbre;
use crate::app::sound::voice;
use crate::app::sound::voice::Voice;
use crate::bench::notebook::Tick;
use crate::plant::sound::SoundKind;
use crate::plant::sound::SoundSource;

/// Length of the noise that is played round and round, s.
const NOISE_S: f32 = 2.0;

struct Set {
    context: AudioContext,
    out: DynamicsCompressorNode,
    noise: AudioBuffer,
}

/// The loudspeaker of a bench.
#[derive(Default)]
pub struct Speaker {
    set: Option<Set>,
    voices: BTreeMap<SoundKind, Voice>,
    /// The tick played last: each is played once.
    played: Option<Tick>,
}

impl Speaker {
    /// A person has acted: from now on the page may sound.
    pub fn wake(&mut self) {
        if self.set.is_none() {
            self.set = Set::new().ok();
        }
        if let Some(set) = &self.set
            && set.context.state() == AudioContextState::Suspended
        {
            // It stays silent where the browser refuses.
            let _ = set.context.resume();
        }
    }

    /// Plays what sounds at this tick at a volume from 0 to 1.
    pub fn play(&mut self, tick: Tick, sources: &[SoundSource], volume: f64) {
        if self.played.replace(tick) != Some(tick) {
            // A graph the browser refuses stays silent; the words under the picture remain.
            let _ = self.try_play(sources, volume);
        }
    }

    /// Lets everything fade.
    pub fn hush(&mut self) {
        if self.played.take().is_some() {
            // As above.
            let _ = self.try_play(&[], 0.0);
        }
    }

    fn try_play(&mut self, sources: &[SoundSource], volume: f64) -> Result<(), JsValue> {
        let Some(set) = &self.set else { return Ok(()) };
        let now_s = set.context.current_time();
        let heard: BTreeMap<SoundKind, (&SoundSource, f32)> = sources
            .iter()
            .map(|source| (source.kind, (source, timbre::gain(source.level_db, volume))))
            .filter(|(_, (_, gain))| *gain > 0.0)
            .collect();
        for (kind, (source, gain)) in &heard {
            let made_of = timbre(*kind);
            if source.is_impulse {
                voice::knock(&set.context, &set.out, &set.noise, (source, made_of), *gain)?;
                continue;
            }
            if !self.voices.contains_key(kind) {
                let voice = Voice::start(&set.context, &set.out, &set.noise, made_of)?;
                self.voices.insert(*kind, voice);
            }
            if let Some(voice) = self.voices.get(kind) {
                voice.follow(source, *gain, now_s)?;
            }
        }
        self.voices.retain(|kind, voice| {
            let lasts = heard
                .get(kind)
                .is_some_and(|(source, _)| !source.is_impulse);
            lasts || voice.end(now_s).is_err()
        });
        Ok(())
    }
}

impl Drop for Speaker {
    fn drop(&mut self) {
        if let Some(set) = &self.set {
            // The page is left: nothing is to be said about a context that will not close.
            let _ = set.context.close();
        }
    }
}

impl Set {
    fn new() -> Result<Self, JsValue> {
        let context = AudioContext::new()?;
        let out = context.create_dynamics_compressor()?;
        out.connect_with_audio_node(&context.destination())?;
        let rate_hz = context.sample_rate();
        let n_samples = (NOISE_S * rate_hz) as u32;
        let noise = context.create_buffer(1, n_samples, rate_hz)?;
        let mut chance = ChaCha8Rng::seed_from_u64(1);
        let samples: Vec<f32> = (0..n_samples)
            .map(|_| chance.next_u32() as f32 / (u32::MAX as f32) * 2.0 - 1.0)
            .collect();
        noise.copy_to_channel(&samples, 0)?;
        Ok(Self {
            context,
            out,
            noise,
        })
    }
}
