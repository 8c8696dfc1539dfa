"""Counts the figures of two reports anew over the rows of an export, and holds them against the program's own.

    reports_over_rows.py LOOPWRIGHT-CLI DATABASE EXPORT NOW

EXPORT is what `export --out` wrote. What is derived of an order (order_state.csv) is used for its outcome and first open
criterion alone; days and visits are counted from facts and events. Prints "N figures agree"; ends with 1 where one differs.
"""
import collections
import csv
import datetime
import json
import subprocess
import sys

program, database, folder, now = sys.argv[1:]
csv.field_size_limit(10**9)


def rows(name):
    with open(f'{folder}/{name}.csv', newline='', encoding='utf-8') as file:
        return list(csv.DictReader(file))


def local_day(utc, offset):
    moment = datetime.datetime.fromisoformat(utc.replace('Z', '+00:00'))
    return (moment + datetime.timedelta(seconds=int(offset))).date().isoformat()


offices = {row['id']: row['office'] for row in rows('office')}
orders = {row['id']: dict(json.loads(row['content']), status=row['status']) for row in rows('service_order')}
for order in orders.values():
    order['days'] = set()  # on which something of the line was shown
state = {row['order_number']: row for row in rows('order_state')}
voided = {row['voids'] for row in rows('fact') if row['voids']}
late = {fact for row in rows('event') for fact in json.loads(row['detail']).get('after_end', [])}
for row in rows('fact'):
    if row['kind'] not in ('void', 'exception', 'note', 'desk', 'referred', 'visit', 'made_with') \
            and row['uuid'] not in voided and row['uuid'] not in late:
        order = orders[row['service_order']]
        order['days'].add(local_day(row['at_utc'], row['at_offset']))
        order['last'] = max(order.get('last', ''), local_day(row['at_utc'], row['at_offset']))
taken = {row['order_number']: local_day(row['at_utc'], row['at_offset'])
         for row in rows('event') if row['kind'] == 'order_taken'}

keys = {
    'office': lambda order: order['office'],
    'installer': lambda order: order.get('installer', ''),
    'cable': lambda order: order['pair'].rpartition('-')[0],
    'variant': lambda order: order.get('protocol_variant', ''),
    'month': lambda order: order.get('last', taken.get(order['order_number'], ''))[:7],
}


def told(kind, per):
    out = subprocess.run([program, 'report', kind, '--per', per, '--db', database, '--now', now, '--json'],
                         capture_output=True, text=True, check=True).stdout
    return json.loads(out)


def first_visit(key):
    count, met = collections.Counter(), collections.Counter()
    for order in orders.values():
        outcome = state[order['order_number']]['outcome']
        if order['status'] == 'cancelled' or order['order_type'] == 'repair' or not outcome.startswith('accepted'):
            continue
        count[key(order)] += 1
        met[key(order)] += len(order['days']) == 1
    return {per: (count[per], met[per]) for per in count}


def failing(key):
    count = collections.Counter()
    for order in orders.values():
        row = state[order['order_number']]
        if order['status'] == 'open' and not row['outcome'].startswith('accepted'):
            count[key(order), row['criterion']] += 1
    return dict(count)


agree = 0
for per, key in keys.items():
    ours = first_visit(key)
    theirs = {row['per']: (row['orders'], row['met']) for row in told('first_visit', per)}
    if ours != theirs:
        sys.exit(f'first_visit by {per}: {ours} counted, {theirs} told')
    agree += len(ours)
    if per == 'month':
        continue  # of what is open by the day it was taken in
    ours = failing(key)
    theirs = {(row['per'], row['criterion']): row['orders'] for row in told('failing', per)}
    if ours != theirs:
        sys.exit(f'failing by {per}: {ours} counted, {theirs} told')
    agree += len(ours)
print(agree, 'figures agree')
