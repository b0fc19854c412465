// @ts-check
/**
 * The fields that a customer sees when the page does not say otherwise: the smallest set that answers, and what somebody who buys a part
 * would change. Names of attributes; everything else of a setup may be given as attributes or as JSON.
 *
 * @type {Record<string, string[]>}
 */
export const SHOWS = {
    'braking': ['laden-mass', 'laden-position-x', 'laden-position-z', 'chassis-wheelbase', 'chassis-braked', 'brakes-rear-torque', 'brakes-parking-torque',
        'tyres-rear-size', 'ground-surface', 'ground-grade', 'manoeuvre-speed'],
    'centre-of-gravity': ['chassis-wheelbase', 'bare-axles-front', 'bare-axles-rear', 'bare-height', 'items-0-name', 'items-0-mass', 'items-0-position-x', 'items-0-position-z'],
    'charge-time': ['pack-chemistry', 'pack-cells-in-series', 'pack-capacity', 'charger-current', 'charger-efficiency', 'supply-outlet', 'supply-cord-size',
        'supply-cord-length', 'charge-from', 'energy-price'],
    'conductor-size': ['circuits-0-continuous-current', 'circuits-0-length', 'circuits-0-voltage', 'circuits-0-location', 'circuits-0-insulation-rating',
        'circuits-0-allowed-drop-share', 'circuits-0-sizes'],
    'descent': ['laden-mass', 'hill-length', 'hill-grade', 'hill-speed', 'pack-chemistry', 'pack-cells-in-series', 'pack-capacity', 'pack-state-of-charge',
        'pack-limits-charge'],
    'drive-performance': ['laden-mass', 'tyres-rear-size', 'drive-ratio', 'drive-motor-type', 'drive-motor-power', 'drive-motor-speed', 'drive-motor-voltage',
        'pack-chemistry', 'pack-cells-in-series', 'ground-grade'],
    'frame-overhang': ['frame-rails-0-section-shape', 'frame-rails-0-section-width', 'frame-rails-0-section-height', 'frame-rails-0-section-wall',
        'frame-rails-0-grade', 'frame-box-mass', 'frame-box-arm', 'frame-load-case'],
    'gearing': ['drive-ratio', 'tyres-rear-size', 'drive-motor-speed', 'drive-before-ratio', 'lift-rear-tyre-before-size', 'drive-speed-limit'],
    'joint': ['joints-0-voltage-drop', 'joints-0-current', 'joints-0-continuous-current', 'joints-0-temperature', 'joints-0-ambient'],
    'lift-geometry': ['lift-front-amount', 'lift-rear-amount', 'lift-front-tyre-before-size', 'lift-rear-tyre-before-size', 'tyres-front-size', 'tyres-rear-size',
        'chassis-wheelbase', 'chassis-ground-clearance'],
    'ownership-cost': ['ownership-horizon', 'ownership-cycles-per-year', 'ownership-options-0-name', 'ownership-options-0-price', 'ownership-options-0-calendar-life',
        'ownership-options-1-name', 'ownership-options-1-price', 'ownership-options-1-calendar-life', 'energy-price'],
    'pack-check': ['pack-chemistry', 'pack-cells-in-series', 'pack-capacity', 'readings-pack-rest-voltage', 'readings-rest-time', 'readings-load-current',
        'readings-pack-load-voltage'],
    'pack-fit': ['pack-chemistry', 'pack-cells-in-series', 'pack-limits-continuous-discharge', 'drive-controller-minimum-voltage', 'drive-controller-maximum-voltage',
        'drive-controller-battery-current', 'charger-end-voltage', 'accessories-converter-maximum-voltage'],
    'pack-range': ['pack-chemistry', 'pack-cells-in-series', 'pack-capacity', 'pack-usable-share', 'laden-mass', 'route-0-distance', 'route-0-speed', 'route-0-grade',
        'route-0-surface'],
    'pack-weight-change': ['chassis-wheelbase', 'bare-axles-front', 'bare-axles-rear', 'former-pack-mass', 'former-pack-position-x', 'pack-mass', 'pack-position-x'],
    'precharge': ['pack-chemistry', 'pack-cells-in-series', 'precharge-capacitance', 'precharge-resistor-resistance', 'precharge-resistor-power-rating',
        'precharge-timeout', 'precharge-current-limit'],
    'ride-height': ['suspension-rear-spring-rate', 'suspension-rear-springs', 'suspension-rear-motion-ratio', 'suspension-rear-free-travel', 'chassis-wheelbase',
        'bare-axles-front', 'bare-axles-rear', 'items-0-mass', 'items-0-position-x'],
    'seat-reach': ['seat-hip-point-x', 'seat-hip-point-z', 'seat-lowered', 'seat-moved-rearward', 'seat-slider-travel'],
    'stability': ['chassis-wheelbase', 'chassis-front-track', 'chassis-rear-track', 'laden-mass', 'laden-position-x', 'laden-position-z', 'chassis-turning-radius',
        'ground-surface', 'ground-side-slope'],
    'storage': ['pack-chemistry', 'pack-capacity', 'pack-state-of-charge', 'storage-from', 'storage-duration', 'storage-temperature', 'storage-lowest-temperature',
        'storage-quiescent-current'],
    'towing': ['trailer-mass', 'trailer-count', 'trailer-braked', 'trailer-hitch-load', 'trailer-hitch-height', 'trailer-hitch-overhang', 'bare-mass',
        'bare-front-share', 'bare-height', 'chassis-wheelbase', 'ground-grade', 'ground-surface'],
    'vehicle-class': ['use-top-speed', 'chassis-seats', 'use-kerb-mass', 'chassis-ratings-total', 'drive-motor-power', 'use-carries', 'use-place'],
};
