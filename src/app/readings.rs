//! Readings and faults: what each reading tells apart on a machine, computed here, to sort, print
//! and take away.

use web_sys::HtmlSelectElement;
use yew::prelude::*;

use crate::app::hooks::go_to;
use crate::app::route::Route;
use crate::app::rows::use_rows;
use crate::app::shared::Shared;
use crate::language::in_english;
use crate::language::worded;
use crate::say;
use crate::scenario;
use crate::score::Matrix;
use crate::score::Row;

/// Which machine.
#[derive(Properties, PartialEq)]
pub struct ReadingsProps {
    /// Its short name; the first one without.
    pub machine: Option<String>,
}

/// The screen: choose a machine, then its table.
#[component]
pub fn ReadingsScreen(props: &ReadingsProps) -> Html {
    let Ok(packs) = scenario::machines() else {
        return Html::default();
    };
    let asked = props
        .machine
        .as_deref()
        .filter(|id| packs.contains_key(*id));
    let machine = asked.unwrap_or("P").to_owned();
    let onchange = Callback::from(|event: Event| {
        go_to(&Route::Readings(Some(
            event.target_unchecked_into::<HtmlSelectElement>().value(),
        )));
    });
    html! {
        <main class="page page--wide stack" id="main" tabindex="-1">
            <header class="page__head">
                <h1>{ say!("Readings and faults") }</h1>
                <p class="page__lead">{ say!("Every fault a machine can have against the readings of its data sheet and the figures of a whole program. What a technician would notice is marked ●; what is not marked looks like a sound machine there.") }</p>
            </header>
            <label class="field no-print"><span class="field__label">{ say!("Machine") }</span>
                <select {onchange}>
                    { for packs.iter().map(|(id, pack)| html! {
                        <option value={id.clone()} selected={*id == machine}>{ worded(&pack.model.name).into_owned() }</option>
                    }) }
                </select>
            </label>
            <Readings key={machine.clone()} machine={machine.clone()} />
        </main>
    }
}

#[derive(Properties, PartialEq)]
struct TableProps {
    machine: String,
}

/// The table, which grows as threads read one fault after the other.
#[component]
fn Readings(props: &TableProps) -> Html {
    let pack = scenario::machines()
        .ok()
        .and_then(|packs| packs.get(&props.machine));
    let matrix = use_memo(props.machine.clone(), |_| {
        pack.and_then(|pack| Matrix::new(&pack.model, &pack.workshop).ok())
            .map(Shared::new)
    });
    let known = use_rows(&props.machine);
    let sort = use_state(Sort::default);
    let href = {
        let matrix = (*matrix).clone();
        let whole = known.is_whole().then(|| known.rows.clone());
        use_memo(whole, move |rows| {
            let (matrix, rows) = (matrix?, rows.as_ref()?);
            let csv = in_english(|| matrix.csv(rows.iter().map(|row| &**row)));
            Some(address(&csv))
        })
    };
    let Some(matrix) = (*matrix).clone() else {
        return html! { <p role="status">{ say!("The table of this machine cannot be computed.") }</p> };
    };
    let order = ordered(&known.rows, *sort);
    let by = |column: Option<usize>| {
        let sort = sort.clone();
        Callback::from(move |_: MouseEvent| sort.set(sort.clicked(column)))
    };
    html! {
        <>
            <p class="row no-print">
                if let Some(why) = &known.failed {
                    <span role="status">{ why }</span>
                } else if !known.is_whole() {
                    <progress max={known.of.to_string()} value={known.rows.len().to_string()} aria-hidden="true" />
                    <span role="status">{ say!("{done} of {n} faults computed …", done = known.rows.len(), n = known.of) }</span>
                } else if let Some(href) = (*href).clone() {
                    <a class="button" download={format!("readings_{}.csv", props.machine)} {href}>{ say!("Save as CSV") }</a>
                    <button type="button" class="button" onclick={|_: MouseEvent| print()}>{ say!("Print") }</button>
                }
            </p>
            <div class="table__wrap readings" tabindex="0" role="region" aria-label={say!("Faults against readings")}>
                <table class="table table--numbers">
                    <thead><tr>
                        <th scope="col" aria-sort={sort.told(None)}>
                            <button type="button" class="readings__sort" onclick={by(None)}>{ say!("What is wrong") }</button></th>
                        { for matrix.columns().iter().enumerate().map(|(index, column)| html! {
                            <th scope="col" aria-sort={sort.told(Some(index))}>
                                <button type="button" class="readings__sort" onclick={by(Some(index))}>{ worded(&column.what).into_owned() }</button>
                                <br /><small>{ worded(&column.how).into_owned() }</small></th>
                        }) }
                    </tr></thead>
                    <tbody>
                        { table_row(matrix.sound()) }
                        { for order.into_iter().map(|row| html! { <TableRow key={row.fault.clone()} row={row.clone()} /> }) }
                    </tbody>
                </table>
            </div>
        </>
    }
}

/// How the rows are ordered: by what is wrong, or by a reading; a second click turns it round.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
struct Sort {
    column: Option<usize>,
    is_turned: bool,
}

impl Sort {
    fn clicked(self, column: Option<usize>) -> Self {
        Self {
            column,
            is_turned: self.column == column && !self.is_turned,
        }
    }

    /// As the head of a column tells it. Words begin with the first letter, readings with the largest.
    fn told(self, column: Option<usize>) -> Option<&'static str> {
        let is_up = column.is_none() != self.is_turned;
        (self.column == column).then_some(if is_up { "ascending" } else { "descending" })
    }
}

/// By what is wrong; or what a reading shows first, then the rest; or the other way round.
fn ordered(rows: &[Shared<Row>], sort: Sort) -> Vec<Shared<Row>> {
    let mut order = rows.to_vec();
    match sort.column {
        None => order.sort_by_cached_key(|row| worded(&row.what).into_owned()),
        Some(column) => {
            let key = |row: &Row| {
                let cell = row.cells.get(column);
                let value = cell.and_then(|cell| cell.value).unwrap_or(f64::INFINITY);
                (cell.is_some_and(|cell| cell.differs), value)
            };
            order.sort_by(|a, b| {
                let ((a_differs, a), (b_differs, b)) = (key(a), key(b));
                b_differs.cmp(&a_differs).then(b.total_cmp(&a))
            });
        }
    }
    if sort.is_turned {
        order.reverse();
    }
    order
}

/// A row; what is known already is not drawn again when another one comes.
#[derive(Properties, PartialEq)]
struct TableRowProps {
    row: Shared<Row>,
}

#[component]
fn TableRow(props: &TableRowProps) -> Html {
    table_row(&props.row)
}

fn table_row(row: &Row) -> Html {
    html! {
        <tr>
            <th scope="row">{ worded(&row.what).into_owned() }</th>
            { for row.cells.iter().map(|cell| html! {
                <td class={classes!(cell.differs.then_some("readings__differs"))}>
                    { if cell.differs { "● " } else { "" } }{ cell.said() }</td>
            }) }
        </tr>
    }
}

/// The text of a table as an address that holds it.
fn address(csv: &str) -> String {
    let text = String::from(js_sys::encode_uri_component(csv));
    format!("data:text/csv;charset=utf-8,{text}")
}

fn print() {
    // A browser that does not print says so itself.
    let _ = gloo::utils::window().print();
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::score::Cell;

    fn row(what: &str, value: f64, differs: bool) -> Shared<Row> {
        Shared::new(Row {
            fault: what.to_owned(),
            what: what.to_owned(),
            cells: vec![Cell {
                shown: value.to_string(),
                value: Some(value),
                differs,
            }],
        })
    }

    #[test]
    fn a_second_click_turns_the_order_round_and_another_column_begins_anew() {
        let rows = [
            row("b", 5.0, true),
            row("a", 9.0, false),
            row("c", 7.0, true),
        ];
        let order = |sort: Sort| -> String {
            let order = ordered(&rows, sort).into_iter();
            order.map(|row| row.what.clone()).collect()
        };
        let mut sort = Sort::default();
        assert_eq!(
            (order(sort).as_str(), sort.told(None)),
            ("abc", Some("ascending"))
        );
        sort = sort.clicked(None);
        assert_eq!(
            (order(sort).as_str(), sort.told(None)),
            ("cba", Some("descending"))
        );
        sort = sort.clicked(Some(0));
        assert_eq!(
            (order(sort).as_str(), sort.told(Some(0))),
            ("cba", Some("descending"))
        );
        assert_eq!(sort.told(None), None);
        sort = sort.clicked(Some(0));
        assert_eq!(
            (order(sort).as_str(), sort.told(Some(0))),
            ("abc", Some("ascending"))
        );
        assert_eq!(
            sort.clicked(Some(0)),
            Sort {
                column: Some(0),
                is_turned: false
            }
        );
    }
}
